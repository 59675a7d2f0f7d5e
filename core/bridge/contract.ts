import { z } from 'zod';
import { Drawing } from '../exports/drawing/drawing';
import { DocumentOptions } from '../exports/exporter';
import { FileFormat } from '../exports/file-format';
import { Paper } from '../exports/paper/paper';
import { Table } from '../exports/table';
import {
  CatalogueAnswer,
  Done,
  DoneAnswer,
  ExportAnswer,
  ExternalAnswer,
  FolderAnswer,
  HoldAnswer,
  InitialAnswer,
  JobStartAnswer,
  JobStateAnswer,
  OnDiskAnswer,
  OpenAnswer,
  PreviewAnswer,
  SaveAnswer,
  SaveAsAnswer,
} from './answers';
import { type Channel } from './channels';
import { RememberedFindings } from '../model/remembered-finding';
import { Settings } from './settings';

const Nothing = z.strictObject({});
const Token = z.string().min(1);
/** The window's own name for an open document, so that each has one backup. */
const DocumentId = z.uuid();

/**
 * Every call that the window can make, with the shape of question and answer. Both sides parse both.
 *
 * Where `app:info` says `dialogs: 'native'`, the host asks the user for a place (`project:open-dialog`,
 * `catalogue:import-dialog`; `name` in save-as and export is null). Where it says `'listed'`, the window shows its own dialog
 * over the one working folder (`*:list-folder`) and names a bare file in it.
 */
export const contract = {
  'app:info': {
    request: Nothing,
    response: z.strictObject({
      version: z.string(),
      host: z.enum(['electron', 'browser']),
      platform: z.string(),
      dialogs: z.enum(['native', 'listed']),
    }),
  },
  /** An error of the window, for the log: its kind and its places in the program, nothing else. */
  'app:report': {
    request: z.strictObject({ name: z.string().max(100), stack: z.string().max(20_000) }),
    response: Done,
  },
  /** Facts about program and machine, and the log of this run: no project content. For the user to copy. */
  'app:diagnostics': { request: Nothing, response: z.strictObject({ text: z.string() }) },
  /** What to show at the start: the file the program was opened with, or nothing. */
  'project:initial': { request: Nothing, response: InitialAnswer },
  'project:list-demos': {
    request: Nothing,
    response: z.strictObject({
      demos: z.array(z.strictObject({ demo: z.string(), title: z.string(), supplementaryTitle: z.string() })),
    }),
  },
  'project:new-from-demo': { request: z.strictObject({ demo: z.string() }), response: OpenAnswer },
  'project:recent': {
    request: Nothing,
    response: z.strictObject({
      recent: z.array(z.strictObject({ id: z.string(), name: z.string(), opened: z.iso.datetime() })),
    }),
  },
  'project:list-folder': { request: Nothing, response: FolderAnswer },
  'project:open': {
    request: z.discriminatedUnion('from', [
      z.strictObject({ from: z.literal('recent'), id: z.string() }),
      z.strictObject({ from: z.literal('folder'), name: z.string() }),
      z.strictObject({ from: z.literal('token'), token: Token }),
    ]),
    response: OpenAnswer,
  },
  'project:open-dialog': { request: Nothing, response: OpenAnswer },
  /** `revision` is the one the text was read or last saved with; null overwrites whatever is there, when the user said so. */
  'project:save': {
    request: z.strictObject({ token: Token, text: z.string(), revision: z.string().nullable() }),
    response: SaveAnswer,
  },
  'project:save-as': {
    request: z.strictObject({
      suggestedName: z.string(),
      text: z.string(),
      name: z.string().nullable(),
      replace: z.boolean(),
    }),
    response: SaveAsAnswer,
  },
  'project:on-disk': {
    request: z.strictObject({ token: Token, revision: z.string() }),
    response: OnDiskAnswer,
  },
  /**
   * Says that this window works on the file, for others to see; to be said again every half minute or so. `takeOver` puts
   * it in the place of whoever does.
   */
  'project:hold': {
    request: z.strictObject({ token: Token, window: z.uuid(), takeOver: z.boolean() }),
    response: HoldAnswer,
  },
  'project:let-go': { request: z.strictObject({ token: Token, window: z.uuid() }), response: Done },
  /** In the browser host the file goes to the folder `exports` inside the working folder. */
  'file:export': {
    request: z.strictObject({
      suggestedName: z.string(),
      bytesBase64: z.string(),
      mediaType: z.string(),
      filters: z.array(z.strictObject({ name: z.string(), extensions: z.array(z.string()) })),
      name: z.string().nullable(),
      replace: z.boolean(),
    }),
    response: ExportAnswer,
  },
  /** The same for a table, which the host turns into bytes: spreadsheets are not made in the window. */
  'table:export': {
    request: z.strictObject({
      table: Table,
      format: z.enum(['csv', 'xlsx', 'json']),
      suggestedName: z.string(),
      name: z.string().nullable(),
      replace: z.boolean(),
    }),
    response: ExportAnswer,
  },
  /** The same for a document as pages, which the host draws with its fonts. */
  'paper:export': {
    request: z.strictObject({
      paper: Paper,
      suggestedName: z.string(),
      name: z.string().nullable(),
      replace: z.boolean(),
    }),
    response: ExportAnswer,
  },
  /** The pages of a document to look at or to print: the very bytes that `paper:export` would write. */
  'paper:preview': { request: z.strictObject({ paper: Paper }), response: PreviewAnswer },
  /** The same for a document as one picture at true size. */
  'drawing:export': {
    request: z.strictObject({
      drawing: Drawing,
      title: z.string(),
      format: z.enum(['svg', 'dxf']),
      suggestedName: z.string(),
      name: z.string().nullable(),
      replace: z.boolean(),
    }),
    response: ExportAnswer,
  },
  /**
   * Makes many files in one go, everything or nothing: the package of a released revision, or chosen documents in a folder
   * of their own. The host reads, derives and checks the text with the catalogues that come with the program; ask
   * `job:state` how it stands. Decisions and prices are judged on `date`; a release on the day of the release. In the browser
   * host the files go to the folders `releases` and `exports` inside the working folder; else the user is asked for a folder.
   */
  'job:start': {
    request: z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('release'), text: z.string() }),
      z.strictObject({
        kind: z.literal('export-all'),
        text: z.string(),
        date: z.iso.date(),
        documents: z
          .array(
            z.strictObject({
              document: z.string(),
              format: FileFormat,
              options: DocumentOptions.optional(),
            }),
          )
          .min(1)
          .max(200),
      }),
    ]),
    response: JobStartAnswer,
  },
  'job:state': { request: z.strictObject({ job: z.uuid() }), response: JobStateAnswer },
  /** Takes back what the job has made so far; it may have ended already. */
  'job:cancel': { request: z.strictObject({ job: z.uuid() }), response: Done },
  /** The catalogues that come with the program. */
  'catalogue:list': {
    request: Nothing,
    response: z.strictObject({
      catalogues: z.array(z.strictObject({ name: z.string(), text: z.string() })),
    }),
  },
  'catalogue:list-folder': { request: Nothing, response: FolderAnswer },
  'catalogue:import': { request: z.strictObject({ name: z.string() }), response: CatalogueAnswer },
  'catalogue:import-dialog': { request: Nothing, response: CatalogueAnswer },
  /** Unsaved work, every few seconds, outside the user's file. */
  'backup:write': {
    request: z.strictObject({
      document: DocumentId,
      token: Token.nullable(),
      /** The revision that the text was read or last saved with. */
      revision: z.string().nullable(),
      name: z.string(),
      text: z.string(),
    }),
    response: DoneAnswer,
  },
  'backup:list': {
    request: Nothing,
    response: z.strictObject({
      backups: z.array(z.strictObject({ document: DocumentId, name: z.string(), written: z.iso.datetime() })),
    }),
  },
  /** Opens the text as an unsaved change of its file where that file still exists, else as a new project. */
  'backup:open': { request: z.strictObject({ document: DocumentId }), response: OpenAnswer },
  'backup:discard': { request: z.strictObject({ document: DocumentId }), response: DoneAnswer },
  /** Since when the findings of a project are there, as this machine has seen it; null where it never saw the project. */
  'history:read': {
    request: z.strictObject({ project: z.uuid() }),
    response: z.strictObject({ findings: RememberedFindings.nullable() }),
  },
  'history:write': {
    request: z.strictObject({ project: z.uuid(), findings: RememberedFindings }),
    response: DoneAnswer,
  },
  'settings:get': { request: Nothing, response: Settings },
  'settings:set': { request: Settings, response: DoneAnswer },
  'shell:open-external': { request: z.strictObject({ url: z.string() }), response: ExternalAnswer },
} as const satisfies Record<Channel, { request: z.ZodType; response: z.ZodType }>;

export type Request<C extends Channel> = z.infer<(typeof contract)[C]['request']>;
export type Response<C extends Channel> = z.infer<(typeof contract)[C]['response']>;

/** A host answers all of them: a missing handler does not compile. */
export type Handlers = { [C in Channel]: (request: Request<C>) => Promise<Response<C>> };

/**
 * The one object that the window sees. Electron's preload provides it as `window.latchwork`. In the browser host the
 * window makes its own: POST `/rpc/<channel>` with the request as JSON and the header `x-latchwork-token`, which stands
 * in the address as `#token=…`. Status 200 carries the answer; any other carries `{ error }` and means a fault of ours.
 */
export interface RawBridge {
  invoke(channel: Channel, request: unknown): Promise<unknown>;
}
