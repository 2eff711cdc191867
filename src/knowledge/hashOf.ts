import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** Members in order of name, so that the hash says what is known and not how it was written down. */
const inOrder = (_: string, value: unknown): unknown =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1))) : value;

/** Sixteen hexadecimal digits that tell this data from other data. */
export const hashOf = (data: unknown): string => bytesToHex(sha256(utf8ToBytes(JSON.stringify(data, inOrder)))).slice(0, 16);
