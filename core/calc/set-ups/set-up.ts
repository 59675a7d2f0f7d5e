/** What one side of a cut-and-crimp machine must hold; undefined where the side needs nothing of the kind. */
export interface MachineEnd {
  readonly applicator?: string | undefined;
  readonly strip?: string | undefined;
  readonly seal?: string | undefined;
}

/** What a machine must hold to make one kind of lead. The lead may run either way round. */
export interface SetUp {
  /** Wire by part and colour. */
  readonly spool: string;
  readonly a: MachineEnd;
  readonly b: MachineEnd;
}

/** A set-up by its place in the list, and whether its ends are exchanged on the machine. */
export interface Run {
  readonly index: number;
  readonly swapped: boolean;
}

export const STATIONS = ['spool', 'contact A', 'strip A', 'seal A', 'contact B', 'strip B', 'seal B'] as const; // prettier-ignore
export type Station = (typeof STATIONS)[number];

/** What each station must hold, in the order of STATIONS. */
export function demandsOf({ spool, a, b }: SetUp, swapped: boolean): readonly (string | undefined)[] {
  const [left, right] = swapped ? [b, a] : [a, b];
  return [spool, left.applicator, left.strip, left.seal, right.applicator, right.strip, right.seal];
}

/**
 * The stations that are changed before each run, from an empty machine on. A station that a lead does not need keeps what it
 * holds: mounting later never costs more.
 */
export function changesOf(setUps: readonly SetUp[], runs: readonly Run[]): readonly (readonly Station[])[] {
  const held: (string | undefined)[] = STATIONS.map(() => undefined);
  return runs.map(({ index, swapped }) => {
    const changed: Station[] = [];
    demandsOf(setUps[index]!, swapped).forEach((want, station) => {
      if (want === undefined || want === held[station]) return;
      held[station] = want;
      changed.push(STATIONS[station]!);
    });
    return changed;
  });
}

/** Number of changes of a sequence. */
export const countChanges = (setUps: readonly SetUp[], runs: readonly Run[]): number =>
  changesOf(setUps, runs).reduce((sum, changed) => sum + changed.length, 0);
