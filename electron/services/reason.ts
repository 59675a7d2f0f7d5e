const sentences: Record<string, string> = {
  ENOENT: 'The file or folder does not exist.',
  EACCES: 'The system does not allow it.',
  EPERM: 'The system does not allow it.',
  EROFS: 'The disk is read-only.',
  ENOSPC: 'The disk is full.',
  EISDIR: 'This is a folder, not a file.',
  ENOTDIR: 'A part of the path is not a folder.',
  EBUSY: 'Another program holds the file.',
  EMFILE: 'Too many files are open.',
  ENAMETOOLONG: 'The name is too long.',
  ELOOP: 'The link leads in a circle.',
  EIO: 'The disk has an error.',
  EDQUOT: 'Your share of the disk is used up.',
  EFBIG: 'The disk does not take a file of this size.',
  ENODEV: 'The disk is gone.',
  ENXIO: 'The disk is gone.',
  ESTALE: 'The folder on the network is gone.',
  ETIMEDOUT: 'The network does not answer.',
  EHOSTDOWN: 'The network does not answer.',
  EHOSTUNREACH: 'The network does not answer.',
  STALLED: 'The disk or network did not answer in time; what was begun may still end well.',
};

/** What the system said, as a sentence for the user and without a path. */
export function reasonOf(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return sentences[code] ?? (code ? `The system answered ${code}.` : 'The system gave no reason.');
}

export const failed = (reason: string): { status: 'failed'; reason: string } => ({
  status: 'failed',
  reason,
});

export const isMissing = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && error.code === 'ENOENT';

export const isTaken = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && error.code === 'EEXIST';
