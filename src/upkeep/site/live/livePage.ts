import { html } from '../html.js';
import type { Page } from '../page.js';

/** The page on which a question is asked and answered; its script fills it. */
export const livePage: Page = {
  path: 'live/index.html',
  title: 'Ask',
  description: 'Ask about a tree, and watch the answer change as facts are told.',
  words: 'ask question verdict live try form',
  head: html`<link rel="stylesheet" href="~/live/live.css"><script type="module" src="~/live/live.js"></script>`,
  body: html`<div class="live">
<div class="intro"><h1>Ask before the cut</h1>
<p class="lead">Name the tree and the work. Each fact that you tell sharpens the answer.</p>
<noscript><p>This page works out its answers in your browser, and needs JavaScript for it.</p></noscript></div>
<form id="ask" class="panel" aria-label="Your question">
<p id="link-fault" class="fault" role="status"></p>
<div id="species"></div><ul id="near" class="choices" aria-label="Names that are near"></ul>
<div id="work"></div>
<fieldset><legend>When and where</legend><div id="when"></div><ul id="near-places" class="choices" aria-label="Stations that are near"></ul>
<details><summary>Or your own frost dates</summary><div id="frost"></div></details></fieldset>
<details id="how" class="panel-part"><summary>How it is done</summary><div id="parameters"><p class="more">Choose the work first.</p></div></details>
<details class="panel-part"><summary>About the tree</summary><div id="tree"></div></details>
<ul id="faults" class="fault"></ul>
<p class="row"><button id="anew" type="button">Begin anew</button> <a id="own-link" href="">Link to this question</a></p>
<div id="lists" hidden></div>
<button id="to-answer" type="button" hidden></button>
</form>
<section class="result" aria-label="The answer">
<p id="verdict" role="status" aria-live="polite" tabindex="-1">Loading the knowledge.</p>
<div id="answer"></div>
<div id="year"></div>
<details id="sample-tree"><summary>An invented tree, and which branches to keep</summary>
<p>This pine is made up, as a sample of what telling branches brings. It has nothing to do with the tree that you asked about.</p>
<div id="sample"></div></details>
</section>
</div>`,
};
