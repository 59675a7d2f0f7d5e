import { type Session, type WebContents, app } from 'electron';
import { isWindowAddress } from './window-address';

/** Writing to the clipboard after a click is all that the window may ask of the system. */
const granted = new Set(['clipboard-sanitized-write']);
const localSchemes = ['blob:', 'data:', 'devtools:'];

/** Every page that ever comes to be in this program: it stays where it is, opens nothing and embeds nothing. */
export function lockDownPages(): void {
  app.on('web-contents-created', (_event, contents: WebContents) => {
    contents.on('will-navigate', (event) => event.preventDefault());
    contents.on('will-redirect', (event) => event.preventDefault());
    contents.on('will-attach-webview', (event) => event.preventDefault());
    contents.setWindowOpenHandler(() => ({ action: 'deny' }));
  });
}

/** No permissions, no devices, no network. */
export function lockDownSession(session: Session): void {
  session.setPermissionRequestHandler((_contents, permission, answer) => answer(granted.has(permission)));
  session.setPermissionCheckHandler((_contents, permission) => granted.has(permission));
  session.setDevicePermissionHandler(() => false);
  session.webRequest.onBeforeRequest(({ url }, answer) =>
    answer({ cancel: !isWindowAddress(url) && !localSchemes.some((scheme) => url.startsWith(scheme)) }),
  );
}
