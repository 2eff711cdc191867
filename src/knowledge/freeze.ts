/** Freezes plain data all the way down, and hands it back. */
export const freeze = <Data>(data: Data): Data => {
  if (typeof data === 'object' && data !== null && !Object.isFrozen(data)) {
    Object.freeze(data);
    for (const member of Object.values(data)) if (typeof member === 'object') freeze(member);
  }
  return data;
};
