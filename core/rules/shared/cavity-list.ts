/** Cavities for a sentence, runs of numbers drawn together: "3, 5 to 9, A1". */
export function cavityList(cavities: readonly string[]): string {
  const runs: { first: string; last: string }[] = [];
  for (const cavity of cavities) {
    const run = runs.at(-1);
    if (run && /^\d+$/.test(cavity) && Number(cavity) === Number(run.last) + 1) run.last = cavity;
    else runs.push({ first: cavity, last: cavity });
  }
  return runs.map(runText).join(', ');
}

function runText({ first, last }: { first: string; last: string }): string {
  if (first === last) return first;
  return Number(last) === Number(first) + 1 ? `${first}, ${last}` : `${first} to ${last}`;
}
