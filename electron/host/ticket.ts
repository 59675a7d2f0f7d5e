import { tokenFits } from './gate';

/** The window asks at its start; who comes later has read the ticket somewhere else. */
const GOOD_FOR_MS = 60_000;

/**
 * Good for the token once and for a short time. The command line of a browser can be read by every user of a machine, so
 * the token itself must not stand in it.
 */
export class Ticket {
  #used = false;
  readonly #made: number;

  constructor(
    readonly text: string,
    private readonly now: () => number = Date.now,
  ) {
    this.#made = now();
  }

  /** True for the first who shows it in time. */
  takes(given: unknown): boolean {
    if (this.#used || this.now() - this.#made > GOOD_FOR_MS || !tokenFits(given, this.text)) return false;
    this.#used = true;
    return true;
  }
}
