import { enablePatches, Immer } from 'immer';

enablePatches();

/**
 * Writes projects without freezing them: the engine reads elements of frozen arrays by a slow way, ten times as long, and every
 * edit passes over arrays with ten thousand of them. That nothing else writes is told by the tests, which freeze.
 */
export const writer = new Immer({ autoFreeze: false });
