import { createStore, useStore } from 'zustand';
import { dispatch, dispatchUnknown, type Call, type Refusal } from '@latchwork/core/commands/dispatch';
import { redo, startHistory, type History } from '@latchwork/core/commands/history';
import { undoKeeping } from '@latchwork/core/commands/shared/undo-keeping';
import {
  checkAlternates,
  speaksOf,
  withAlternates,
  type AlternatesChecked,
} from '@latchwork/core/decisions/check-alternates';
import { rawCheckOf } from '@latchwork/core/decisions/raw-check';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { Harness } from '@latchwork/core/derive/harness';
import { newProject } from '@latchwork/core/model/new-project';
import type { Part } from '@latchwork/core/model/parts/part';
import type { Project } from '@latchwork/core/model/project';
import { checkHarness, type CheckResult } from '@latchwork/core/rules/check-harness';
import type { ObjectRef } from '@latchwork/core/rules/finding';
import { RULES } from '@latchwork/core/rules/index';
import { emptyView, type ViewState } from './view';

/** The open document apart from its content: which file it is, and what of it is on disk. */
export interface DocumentState {
  /** Name of this document for its backups. */
  readonly id: string;
  /** Null while it was never saved. */
  readonly token: string | null;
  readonly name: string;
  readonly revision: string | null;
  /** The project as it is on disk; a different identity now means unsaved changes. */
  readonly savedProject: Project | null;
  /** The project as `revision` holds it, to merge from; null where that is not known. */
  readonly base: Project | null;
  /** Another who works on the file, as far as can be told. */
  readonly heldBy: { readonly user: string; readonly host: string; readonly since: string } | null;
  readonly savedAt: Date | null;
  readonly changedOnDisk: boolean;
}

export interface AppState {
  readonly history: History;
  readonly harness: Harness;
  /** May be a moment behind `history`: rules run after the frame is drawn. */
  readonly check: CheckResult;
  readonly catalogue: readonly Part[];
  readonly document: DocumentState;
  readonly view: ViewState;
  /** Says that a command was refused, and why; the frame shows it. */
  readonly refusal: Refusal | null;
}

export interface AppActions {
  /** Carries out a command. Returns the refusal, or null when it was done. */
  dispatch(call: Call): Refusal | null;
  /** The same for a field, which shows the refusal itself: null, or the reason in words. */
  attempt(call: Call): string | null;
  /** The same for a finding's fix. */
  dispatchFix(call: { readonly id: string; readonly args: unknown }): Refusal | null;
  undo(): void;
  redo(): void;
  /** Replaces the document: after opening, or for a new one. */
  open(project: Project, document: Partial<DocumentState>): void;
  setDocument(change: Partial<DocumentState>): void;
  setCatalogue(parts: readonly Part[]): void;
  setView(change: Partial<ViewState>): void;
  /** Selects objects by key (see selection.ts); `add` toggles them instead. */
  select(keys: Iterable<string>, add?: boolean): void;
  /** "Show me": selects the object, goes to the page that shows it, and asks the sheet to bring it into view. */
  reveal(refs: readonly ObjectRef[], page?: ViewState['page']): void;
  /** Opens the working of a finding on the Findings page: for a click on a badge. */
  showFinding(key: string): void;
  /** Asks the inspector to put the focus into a field of what is selected. */
  focusField(name: string): void;
  dismissRefusal(): void;
}

export type AppStore = ReturnType<typeof createAppStore>;

export interface StoreOptions {
  readonly newId?: () => string;
  /** Runs a task after the current frame; tests pass one that runs at once. */
  readonly later?: (task: () => void) => void;
  /** Runs a task once nothing was edited for a while; gives what calls it off. */
  readonly whenResting?: (task: () => void) => () => void;
}

const afterFrame = (task: () => void): void => {
  requestAnimationFrame(() => setTimeout(task, 0));
};

const REST_MS = 600;
/** Projects of up to so many wires have their alternates tried as they are opened; larger ones when they rest. */
const ALTERNATES_AT_ONCE = 1000;

const toldOfAlternates = ({ findings }: CheckResult) =>
  findings.filter((f) => f.rule === 'alternate-checked');

const afterRest = (task: () => void): (() => void) => {
  const timer = setTimeout(task, REST_MS);
  return () => clearTimeout(timer);
};

/** The one store of the window: the project's history and, apart from it, what the user is looking at. */
export function createAppStore(options: StoreOptions = {}) {
  const newId = options.newId ?? (() => crypto.randomUUID());
  const later = options.later ?? afterFrame;
  const whenResting = options.whenResting ?? afterRest;
  const first = newProject({ id: newId(), revisionId: newId() });
  const firstHarness = deriveHarness(first);

  return createStore<AppState & AppActions>()((set, get) => {
    let checking = false;
    /** Records that the last check held the project's against. */
    let heldAgainst: readonly Part[] | undefined;
    let alternates: AlternatesChecked | undefined;
    let stopResting = (): void => {};
    const checkAll = (harness: Harness, previous?: CheckResult): CheckResult => {
      const catalogue = (heldAgainst = get().catalogue);
      const raw = checkHarness(harness, RULES, previous && rawCheckOf(previous), { catalogue });
      const isLarge = harness.wires.length > ALTERNATES_AT_ONCE;
      const speaks = (): boolean =>
        alternates !== undefined && speaksOf(alternates, harness.project, catalogue);
      const known = previous !== undefined && speaks();
      if (!known && !isLarge) alternates = checkAlternates(raw, catalogue, previous && alternates);
      stopResting();
      if (known ? alternates && alternates.checks.length > 0 : isLarge)
        stopResting = whenResting(tryAlternates);
      return alternates && speaks() ? withAlternates(raw, alternates) : raw;
    };
    /** Alternates are tried anew when the design rests: each costs as much as an edit. */
    const tryAlternates = (): void => {
      const { check, catalogue } = get();
      alternates = checkAlternates(check, catalogue, alternates);
      const next = withAlternates(check, alternates);
      if (JSON.stringify(toldOfAlternates(next)) !== JSON.stringify(toldOfAlternates(check)))
        set({ check: next });
    };
    const checkLater = (): void => {
      if (checking) return;
      checking = true;
      later(() => {
        checking = false;
        const { harness, check, catalogue } = get();
        if (check.harness !== harness || heldAgainst !== catalogue) set({ check: checkAll(harness, check) });
      });
    };
    const setHistory = (history: History): void => {
      const state = get();
      if (history === state.history) return;
      set({ history, harness: deriveHarness(history.project, state.harness), refusal: null });
      checkLater();
    };
    const carryOut = (result: ReturnType<typeof dispatch>): Refusal | null => {
      if (result.ok) {
        setHistory(result.value);
        return null;
      }
      set({ refusal: result.problem });
      return result.problem;
    };
    const context = (): { newId: () => string; catalogue: readonly Part[] } => ({
      newId,
      catalogue: get().catalogue,
    });

    return {
      history: startHistory(first),
      harness: firstHarness,
      check: checkHarness(firstHarness, RULES),
      catalogue: [],
      document: newDocument(newId()),
      view: emptyView,
      refusal: null,
      dispatch: (call) => carryOut(dispatch(get().history, call, context())),
      attempt(call) {
        const result = dispatch(get().history, call, context());
        if (!result.ok) return result.problem.reason;
        setHistory(result.value);
        return null;
      },
      dispatchFix: (call) => carryOut(dispatchUnknown(get().history, call, context())),
      undo: () => setHistory(undoKeeping(get().history, get().document.savedProject ?? NOTHING_SAVED)),
      redo: () => setHistory(redo(get().history)),
      open(project, document) {
        const harness = deriveHarness(project);
        set({
          history: startHistory(project),
          harness,
          check: checkAll(harness),
          document: { ...newDocument(newId()), ...document },
          view: {
            ...get().view,
            selection: new Set(),
            hover: null,
            reveal: null,
            placing: null,
            finding: null,
          },
          refusal: null,
        });
      },
      setDocument: (change) => set({ document: { ...get().document, ...change } }),
      setCatalogue(catalogue) {
        set({ catalogue });
        checkLater();
      },
      setView: (change) => set({ view: { ...get().view, ...change } }),
      select(keys, add = false) {
        const selection = new Set(add ? get().view.selection : []);
        for (const key of keys) {
          if (add && selection.has(key)) selection.delete(key);
          else selection.add(key);
        }
        set({ view: { ...get().view, selection } });
      },
      reveal(refs, page = 'diagram') {
        const selection = new Set(refs.map(keyOfRef));
        const count = (get().view.reveal?.count ?? 0) + 1;
        set({ view: { ...get().view, page, selection, reveal: { refs, count } } });
      },
      showFinding: (key) => set({ view: { ...get().view, page: 'findings', finding: key } }),
      focusField: (name) =>
        set({ view: { ...get().view, field: { name, count: (get().view.field?.count ?? 0) + 1 } } }),
      dismissRefusal: () => set({ refusal: null }),
    };
  });
}

const NOTHING_SAVED = { decisions: [], revisions: [] } as const satisfies Record<string, readonly never[]>;

const newDocument = (id: string): DocumentState => ({
  id,
  token: null,
  name: 'Untitled',
  revision: null,
  savedProject: null,
  base: null,
  heldBy: null,
  savedAt: null,
  changedOnDisk: false,
});

/** The key under which an object is selected: its id, and the cavity where one is meant. */
export const keyOfRef = (ref: ObjectRef): string =>
  ref.cavity === undefined ? ref.id : `${ref.id}:${ref.cavity}`;

/** Work that is not on disk. An untouched new document has none. */
export const isDirty = (state: AppState): boolean =>
  state.history.project !== state.document.savedProject &&
  (state.history.undo.length > 0 || state.history.redo.length > 0 || state.document.savedProject !== null);

export const appStore = createAppStore();

/** Reads the window's store inside a component. */
export const useApp = <T>(pick: (state: AppState & AppActions) => T): T => useStore(appStore, pick);
