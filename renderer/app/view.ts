import type { ObjectRef } from '@latchwork/core/rules/finding';
import type { ToolId } from '@latchwork/core/tools/step-tool';

/** The five pages in the order of the work. */
export const PAGES = ['diagram', 'formboard', 'findings', 'parts-list', 'shop-papers'] as const;
export type Page = (typeof PAGES)[number];

export interface Camera {
  /** Sheet millimetres at the top left corner of the canvas. */
  readonly x: number;
  readonly y: number;
  /** Device-independent pixels per sheet millimetre. */
  readonly pxPerMm: number;
}

/** What the user is looking at. Never part of the project, never undone. */
export interface ViewState {
  readonly page: Page;
  readonly selection: ReadonlySet<string>;
  readonly hover: ObjectRef | null;
  /** Request to bring objects into view; the count tells a repeated request from the old one. */
  readonly reveal: { readonly refs: readonly ObjectRef[]; readonly count: number } | null;
  readonly diagramCamera: Camera | null;
  readonly formboardCamera: Camera | null;
  readonly snap: boolean;
  /** Whether findings show on the diagram; one may want to see the drawing alone. */
  readonly findingsShown: boolean;
  /** What the pointer does on the sheets. */
  readonly tool: ToolId;
  /** Request to the sheet in view to zoom; the count tells a repeated request from the old one. */
  readonly zoom: { readonly to: 'all' | 'selection' | 'in' | 'out'; readonly count: number } | null;
  /** Part that the next click on the sheet places (id in the project's parts or the catalogue); Escape clears it. */
  readonly placing: string | null;
  /** Key of the finding whose working is open. */
  readonly finding: string | null;
  /** Request to put the focus into a field of the inspector, by the field's name in the model. */
  readonly field: { readonly name: string; readonly count: number } | null;
  /** Width or height of each panel in pixels; 0 is put away. */
  readonly panelSizesPx: Readonly<Record<string, number>>;
  readonly lengthUnit: 'mm' | 'in';
  readonly theme: 'light' | 'dark' | 'system';
}

export const emptyView: ViewState = {
  page: 'diagram',
  selection: new Set(),
  hover: null,
  reveal: null,
  diagramCamera: null,
  formboardCamera: null,
  snap: true,
  findingsShown: true,
  tool: 'select',
  zoom: null,
  placing: null,
  finding: null,
  field: null,
  panelSizesPx: {},
  lengthUnit: 'mm',
  theme: 'system',
};

type Keep = 'never' | 'settings';

/** Where each field is kept beyond the session; a new field does not compile until it says so. */
export const keep = {
  page: 'never',
  selection: 'never',
  hover: 'never',
  reveal: 'never',
  diagramCamera: 'never',
  formboardCamera: 'never',
  snap: 'never',
  findingsShown: 'never',
  tool: 'never',
  zoom: 'never',
  placing: 'never',
  finding: 'never',
  field: 'never',
  panelSizesPx: 'settings',
  lengthUnit: 'settings',
  theme: 'settings',
} as const satisfies Record<keyof ViewState, Keep>;
