import { Command, InvalidArgumentError, Option } from 'commander';
import type { Advisor } from '../advisor.js';
import { SparebudError } from '../knowledge/error.js';
import type { Knowledge } from '../knowledge/knowledge.js';
import type { Assessment } from '../contract/types.generated.js';
import { askedOf } from './askedOf.js';
import { failOnOption, meets } from './failOn.js';
import { askLines } from './lines/askLines.js';
import { fieldsOf } from './lines/fieldsOf.js';
import type { Stopped } from './lines/stopOnSignals.js';
import type { Units } from './page/inUnits.js';
import { pageOf } from './page/page.js';
import { unitsOption } from './page/unitsOption.js';
import { printAssessment } from './printAssessment.js';
import { printIssue } from '../knowledge/printIssue.js';
import { addProposalFlags, setAt } from './proposalFlags.js';
import { isFile, readProposals } from './readProposals.js';
import { shownFile } from './shownFile.js';
import { today } from './today.js';

interface AskOptions {
  readonly units: Units;
  readonly json?: true;
  readonly lines?: true;
  readonly fields?: readonly (keyof Assessment)[];
  readonly jobs?: number;
  readonly full?: true;
  readonly failOn?: string;
  readonly op?: string;
  readonly species?: string;
}

type Flags = Readonly<Record<string, unknown>>;

const example = `
tree: { species: trident maple, vigour: strong, log: [{ op: cut-back, date: 2026-06-10 }] }
operation: { op: repot, rootsRemoved: 0.3 }
where: { latitude: 51.1, longitude: 3.7 }
date: 2027-03-20`;

const jobsOf = (written: string): number => {
  const jobs = Number(written);
  if (!Number.isInteger(jobs) || jobs < 1 || jobs > 64) throw new InvalidArgumentError('a whole number from 1 to 64');
  return jobs;
};

/** What would change nothing: flags for a batch without one, and flags of one proposal beside a batch. */
const refuseIdle = async ({ lines, fields, jobs, ...flags }: AskOptions & Flags, knowledge: Knowledge): Promise<void> => {
  const idle = lines === true ? [] : [...(fields === undefined ? [] : ['--fields']), ...(jobs === undefined ? [] : ['--jobs'])];
  const members = lines === true ? Object.keys((await askedOf({}, flags, flags, knowledge)) as object) : [];
  if (idle.length + members.length === 0) return;
  throw new SparebudError([
    ...idle.map((flag) => ({ code: 'not-allowed', path: flag, message: `\`${flag}\` without \`--lines\``, help: 'it is for a batch: one JSON proposal a line, with --lines' }) as const),
    ...members.map((member) => ({ code: 'not-allowed', path: member, message: `flags that tell \`${member}\` beside \`--lines\``, help: `each line tells its own ${member}` }) as const),
  ]);
};

const dateOf = (proposal: unknown): unknown => (proposal as { readonly date?: unknown } | null)?.date;

/** `sparebud ask`: one question by flags, one or several by a file, or a stream of lines. */
export const askCommand = (advisor: Advisor): Command => {
  const { knowledge } = advisor;
  const command = new Command('ask')
    .description('judge one operation on one tree, before the cut')
    .argument('[what]', 'the operation (repot, cut-back, jin …: see `sparebud operations`), or a YAML or JSON file, or - for standard input')
    .argument('[species]', 'id, accepted name, synonym or common name')
    .option('--op <operation>', 'the operation')
    .option('--species <name>', 'the species')
    .addOption(unitsOption())
    .option('--json', 'print assessments as JSON')
    .option('--lines', 'read one JSON proposal a line, write one assessment a line')
    .addOption(new Option('--fields <list>', 'with --lines: write only these members, such as verdict,range').argParser(fieldsOf))
    .addOption(new Option('--jobs <number>', 'with --lines: answer on so many threads (one where it is not given)').argParser(jobsOf))
    .option('--full', 'print every finding and follow-up')
    .addOption(failOnOption());
  addProposalFlags(command, knowledge)
    .addHelpText('after', `${shownFile('tree.yaml', example)}\nExamples:\n  sparebud ask repot "trident maple" --roots-removed 40% --latitude 51.1 --longitude 3.7 --date 2026-09-20\n  sparebud ask tree.yaml`)
    .action(async (what: string | undefined, species: string | undefined, options: AskOptions & Flags) => {
      await refuseIdle(options, knowledge);
      let failed = false;
      let met = false;
      let stopped: Stopped | undefined;
      if (options.lines === true) {
        const answered = await askLines(advisor, what ?? '-', options);
        met = answered.met;
        failed = answered.failed > 0;
        stopped = answered.stopped;
      } else {
        const fromFile = what !== undefined && isFile(what);
        const read = fromFile ? await readProposals(what) : [undefined];
        for (const [i, proposal] of read.entries()) {
          let asked = await askedOf(proposal, { op: options.op ?? (fromFile ? undefined : what), species: options.species ?? species }, options, knowledge);
          const undated = dateOf(asked) === undefined && (asked as { readonly tree?: { readonly phase?: unknown } }).tree?.phase === undefined;
          if (undated) asked = setAt(asked, 'date', today());
          try {
            const assessment = await advisor.assess(asked);
            met ||= meets(options.failOn, assessment);
            if (options.json === true) process.stdout.write(`${JSON.stringify(assessment, undefined, 2)}\n`);
            else {
              if (i > 0) process.stdout.write('\n');
              if (undated) process.stdout.write(`No date given: taken as today, ${today()}.\n`);
              process.stdout.write(printAssessment(assessment, knowledge, { ...pageOf(options), full: options.full === true }));
            }
          } catch (cause) {
            if (!(cause instanceof SparebudError)) throw cause;
            failed = true;
            for (const issue of cause.issues) process.stderr.write(printIssue(issue));
          }
        }
      }
      if (stopped !== undefined) process.exitCode = stopped.exitCode;
      else if (failed) process.exitCode = 2;
      else if (met) process.exitCode = 1;
    });
  return command;
};
