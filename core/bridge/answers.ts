import { z } from 'zod';

/** The machine said no; `reason` is a sentence for the user. */
export const Failed = z.strictObject({ status: z.literal('failed'), reason: z.string() });
export type Failed = z.infer<typeof Failed>;

export const Cancelled = z.strictObject({ status: z.literal('cancelled') });
export const Done = z.strictObject({ status: z.literal('done') });

/** A name is taken; ask the user, then call again with `replace: true`. */
export const Exists = z.strictObject({ status: z.literal('exists'), name: z.string() });

/**
 * A project text. `token` and `revision` are null while it has no file of its own (a demo, a backup):
 * the first save must then be a save-as. Paths never leave the host.
 */
export const Opened = z.strictObject({
  status: z.literal('opened'),
  token: z.string().nullable(),
  name: z.string(),
  text: z.string(),
  revision: z.string().nullable(),
});
export type Opened = z.infer<typeof Opened>;

export const OpenAnswer = z.discriminatedUnion('status', [Opened, Cancelled, Failed]);
export type OpenAnswer = z.infer<typeof OpenAnswer>;

export const InitialAnswer = z.discriminatedUnion('status', [
  Opened,
  z.strictObject({ status: z.literal('empty') }),
  Failed,
]);
export type InitialAnswer = z.infer<typeof InitialAnswer>;

/** `changed-on-disk` wrote nothing: `revision` is the one found there. */
export const SaveAnswer = z.discriminatedUnion('status', [
  z.strictObject({ status: z.literal('saved'), revision: z.string() }),
  z.strictObject({ status: z.literal('changed-on-disk'), revision: z.string() }),
  Failed,
]);
export type SaveAnswer = z.infer<typeof SaveAnswer>;

export const SaveAsAnswer = z.discriminatedUnion('status', [
  z.strictObject({ status: z.literal('saved'), token: z.string(), name: z.string(), revision: z.string() }),
  Exists,
  Cancelled,
  Failed,
]);
export type SaveAsAnswer = z.infer<typeof SaveAsAnswer>;

export const OnDiskAnswer = z.discriminatedUnion('status', [
  z.strictObject({ status: z.literal('same') }),
  z.strictObject({ status: z.literal('changed'), revision: z.string() }),
  z.strictObject({ status: z.literal('gone') }),
  Failed,
]);
export type OnDiskAnswer = z.infer<typeof OnDiskAnswer>;

/** Who works on a file. `unguarded`: nobody can tell, and why. */
export const HoldAnswer = z.discriminatedUnion('status', [
  z.strictObject({ status: z.literal('held') }),
  z.strictObject({
    status: z.literal('held-elsewhere'),
    user: z.string(),
    host: z.string(),
    since: z.iso.datetime(),
  }),
  z.strictObject({ status: z.literal('unguarded'), reason: z.string() }),
]);
export type HoldAnswer = z.infer<typeof HoldAnswer>;

export const ExportAnswer = z.discriminatedUnion('status', [
  z.strictObject({ status: z.literal('saved'), name: z.string() }),
  Exists,
  Cancelled,
  Failed,
]);
export type ExportAnswer = z.infer<typeof ExportAnswer>;

export const PreviewAnswer = z.discriminatedUnion('status', [
  z.strictObject({ status: z.literal('drawn'), pdfBase64: z.string() }),
  Failed,
]);
export type PreviewAnswer = z.infer<typeof PreviewAnswer>;

/** Bytes of the chosen catalogue file: JSON, CSV or XLSX, to be told apart by the end of `name`. */
export const CatalogueAnswer = z.discriminatedUnion('status', [
  z.strictObject({ status: z.literal('opened'), name: z.string(), bytesBase64: z.string() }),
  Cancelled,
  Failed,
]);
export type CatalogueAnswer = z.infer<typeof CatalogueAnswer>;

/** `place` is for the eyes of the user only. */
export const FolderAnswer = z.discriminatedUnion('status', [
  z.strictObject({
    status: z.literal('listed'),
    place: z.string(),
    files: z.array(z.strictObject({ name: z.string(), bytes: z.number(), modified: z.iso.datetime() })),
  }),
  Failed,
]);
export type FolderAnswer = z.infer<typeof FolderAnswer>;

export const DoneAnswer = z.discriminatedUnion('status', [Done, Failed]);
export type DoneAnswer = z.infer<typeof DoneAnswer>;

/** `here`: the page itself may open the address (browser host). */
export const ExternalAnswer = z.discriminatedUnion('status', [
  Done,
  z.strictObject({ status: z.literal('here') }),
  z.strictObject({ status: z.literal('refused'), reason: z.string() }),
]);
export type ExternalAnswer = z.infer<typeof ExternalAnswer>;

export const JobStartAnswer = z.discriminatedUnion('status', [
  z.strictObject({ status: z.literal('started'), job: z.uuid() }),
  Cancelled,
  Failed,
]);
export type JobStartAnswer = z.infer<typeof JobStartAnswer>;

/** What was not made, and why. */
export const LeftOut = z.strictObject({ what: z.string(), reason: z.string() });

/**
 * How a job stands. `blocked`: findings keep the release from being made. Whatever is not `made` has left nothing behind.
 * A job that is unknown here (the program was started again) is `failed`.
 */
export const JobStateAnswer = z.discriminatedUnion('status', [
  z.strictObject({
    status: z.literal('running'),
    /** Files that are made, of so many; total is 0 while the project is read and checked. */
    done: z.int().nonnegative(),
    total: z.int().nonnegative(),
    /** What is being made, in words. */
    making: z.string(),
  }),
  z.strictObject({
    status: z.literal('made'),
    /** Where it lies, for the eyes of the user only. */
    place: z.string(),
    files: z.array(z.string()),
    leftOut: z.array(LeftOut),
    /** The very same files stood there before; nothing was written. */
    stoodAlready: z.boolean(),
  }),
  z.strictObject({ status: z.literal('blocked'), findings: z.array(z.string()) }),
  Cancelled,
  Failed,
]);
export type JobStateAnswer = z.infer<typeof JobStateAnswer>;
