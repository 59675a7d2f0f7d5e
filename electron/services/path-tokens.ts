import { randomBytes } from 'node:crypto';

/** The window holds tokens; only the host knows the paths behind them. One path has one token. */
export class PathTokens {
  readonly #pathOf = new Map<string, string>();
  readonly #tokenOf = new Map<string, string>();

  tokenFor(path: string): string {
    const known = this.#tokenOf.get(path);
    if (known) return known;
    const token = randomBytes(16).toString('hex');
    this.#tokenOf.set(path, token);
    this.#pathOf.set(token, path);
    return token;
  }

  pathFor(token: string): string | null {
    return this.#pathOf.get(token) ?? null;
  }
}
