import { Menu, type MenuItemConstructorOptions } from 'electron';

/**
 * Commands live in the window, where every host has them. Only macOS needs a menu of its own, for its
 * clipboard keys to work; undo and redo are left out of it because they belong to the project.
 */
export function setMenu(platform: NodeJS.Platform): void {
  const template: MenuItemConstructorOptions[] = [
    { role: 'appMenu' },
    { label: 'Edit', submenu: [{ role: 'cut' }, { role: 'copy' }, { role: 'paste' }, { role: 'selectAll' }] },
    { role: 'windowMenu' },
  ];
  Menu.setApplicationMenu(platform === 'darwin' ? Menu.buildFromTemplate(template) : null);
}
