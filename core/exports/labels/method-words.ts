import type { LabelMethod } from '../../derive/label-texts';

/** The methods in words, with their names in IEC 62491. */
export const METHOD_WORDS: Readonly<Record<LabelMethod | 'none', string>> = {
  'none': 'not settled in the project',
  'identification': 'designator of the wire (IEC 62491: identification)',
  'local-end': 'the end at which it is (IEC 62491: local end)',
  'remote-end': 'the other end (IEC 62491: remote end)',
  'both-ends': 'both ends (IEC 62491: local and remote end)',
  'signal': 'the signal (IEC 62491: signal)',
}; // prettier-ignore
