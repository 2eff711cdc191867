/** Remembers what a function of a set gave. */
export const remembered = <Result>(make: (set: number) => Result): ((set: number) => Result) => {
  const made = new Map<number, Result>();
  return (set) => {
    let result = made.get(set);
    if (result === undefined) made.set(set, (result = make(set)));
    return result;
  };
};
