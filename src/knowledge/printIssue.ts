import type { Issue } from './error.js';

/** An issue as two lines: where and what, then help. */
export const printIssue = (issue: Issue): string => {
  const where = issue.file === undefined ? '' : `${issue.file}:${issue.line ?? 1}:${issue.col ?? 1}: `;
  return `${where}${issue.message}\n${issue.help === undefined ? '' : `  ${issue.help}\n`}`;
};
