/// <reference lib="dom" />

/** An element with its attributes (`true` for one without a value, nothing where `undefined` or `false`) and what stands in it. */
export const el = <Tag extends keyof HTMLElementTagNameMap>(tag: Tag, attributes: Readonly<Record<string, string | boolean | undefined>> = {}, ...within: readonly (Node | string)[]): HTMLElementTagNameMap[Tag] => {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) if (value !== undefined && value !== false) made.setAttribute(name, value === true ? '' : value);
  made.append(...within);
  return made;
};
