import { beforeEach, describe, expect, it } from 'vitest';
import { clipText, duplicateSelection, pasteText } from '../../../renderer/app/clipboard';
import { appStore } from '../../../renderer/app/store';
import { newProject } from '@latchwork/core/model/new-project';
import { freshWindow, idOf, project } from '../window';

const names = () => project().connectors.map((c) => c.designator);

beforeEach(() => freshWindow());

describe('copy and paste', () => {
  it('carries connectors with their wires into another project, and selects them there', () => {
    appStore.getState().select([idOf('X1'), idOf('X2')]);
    const text = clipText()!;
    appStore.getState().open(newProject({ id: crypto.randomUUID(), revisionId: crypto.randomUUID() }), {});
    pasteText(text);
    expect(names()).toEqual(['X1', 'X2']);
    expect(project().wires).toHaveLength(2);
    expect(project().parts.map((p) => p.partNumber)).toContain('C-SOCKET');
    expect(appStore.getState().view.selection.size).toBe(2);
    expect(appStore.getState().history.undo).toHaveLength(1);
  });

  it('gives what is pasted names of its own, each time a little further', () => {
    appStore.getState().select([idOf('X2')]);
    const text = clipText()!;
    pasteText(text);
    pasteText(text);
    expect(names()).toEqual(['X1', 'X2', 'X3', 'X4', 'X5', 'X6']);
    const [at, once, twice] = ['X2', 'X5', 'X6'].map(
      (d) => project().connectors.find((c) => c.designator === d)!.position.x,
    );
    expect([once! - at!, twice! - at!]).toEqual([10, 20]);
  });

  it('duplicates without the clipboard', () => {
    appStore.getState().select([idOf('X1')]);
    duplicateSelection();
    expect(names()).toHaveLength(5);
  });

  it('refuses text that is no clip', () => {
    const before = project();
    pasteText('hello');
    pasteText('{"format":"latchwork-clip"}');
    expect(project()).toBe(before);
  });

  it('copies nothing where nothing can stand alone', () => {
    appStore.getState().select([idOf('W1')]);
    expect(clipText()).toBeNull();
  });
});
