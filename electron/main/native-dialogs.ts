import { type BrowserWindow, dialog } from 'electron';
import { type Dialogs } from '../services/shell';

const projectFilter = [{ name: 'Latchwork project', extensions: ['latchwork'] }];

/** The dialogs of the system, in front of their window. */
export function nativeDialogs(window: BrowserWindow): Dialogs {
  const open = async (filters: { name: string; extensions: string[] }[]): Promise<string | null> => {
    const { canceled, filePaths } = await dialog.showOpenDialog(window, {
      filters,
      properties: ['openFile'],
    });
    return canceled ? null : (filePaths[0] ?? null);
  };
  const save = async (
    defaultPath: string,
    filters: { name: string; extensions: string[] }[],
  ): Promise<string | null> => {
    const { canceled, filePath } = await dialog.showSaveDialog(window, {
      defaultPath,
      filters,
      properties: ['createDirectory', 'showOverwriteConfirmation'],
    });
    return canceled || filePath === '' ? null : filePath;
  };
  return {
    openProject: () => open(projectFilter),
    openCatalogue: () => open([{ name: 'Catalogue', extensions: ['json', 'csv', 'xlsx'] }]),
    saveProject: (suggestedName) => save(suggestedName, projectFilter),
    chooseFolder: async () => {
      const { canceled, filePaths } = await dialog.showOpenDialog(window, {
        properties: ['openDirectory', 'createDirectory'],
      });
      return canceled ? null : (filePaths[0] ?? null);
    },
    saveExport: (suggestedName, filters) => save(suggestedName, [...filters]),
  };
}

/** The page has said that work is unsaved. True lets the window go. */
export function mayLoseWork(window: BrowserWindow): boolean {
  const choice = dialog.showMessageBoxSync(window, {
    type: 'warning',
    message: 'This project has changes that are not saved.',
    detail: 'A backup was kept and is offered at the next start.',
    buttons: ['Keep working', 'Close without saving'],
    defaultId: 0,
    cancelId: 0,
  });
  return choice === 1;
}
