import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { findChromium } from '../../../electron/start/chromium.mjs';

const having =
  (...paths: string[]) =>
  (path: string) =>
    paths.includes(path);

describe('findChromium', () => {
  it('takes the named one first', () => {
    expect(
      findChromium({ CHROMIUM_PATH: '/x/chrome' }, 'linux', having('/x/chrome', '/usr/bin/chromium')),
    ).toBe('/x/chrome');
  });

  it('does not fall back silently when the named one is missing', () => {
    expect(findChromium({ CHROMIUM_PATH: '/x/chrome' }, 'linux', having('/usr/bin/chromium'))).toBeNull();
  });

  it('knows the usual place', () => {
    expect(findChromium({}, 'linux', having('/usr/bin/chromium'))).toBe('/usr/bin/chromium');
  });

  it('looks along the PATH', () => {
    const path = join('/opt/tools', 'google-chrome');
    expect(findChromium({ PATH: '/opt/tools' }, 'linux', having(path))).toBe(path);
  });

  it('says so when there is none', () => {
    expect(findChromium({ PATH: '/opt/tools' }, 'linux', having())).toBeNull();
  });
});
