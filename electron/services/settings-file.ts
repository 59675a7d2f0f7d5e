import { join } from 'node:path';
import { type DoneAnswer } from '@latchwork/core/bridge/answers';
import { Settings, defaultSettings } from '@latchwork/core/bridge/settings';
import { JsonFile } from './json-file';
import { failed, reasonOf } from './reason';

export class SettingsFile {
  readonly #file: JsonFile<typeof Settings>;

  constructor(dataFolder: string) {
    this.#file = new JsonFile(join(dataFolder, 'settings.json'), Settings, defaultSettings);
  }

  get(): Promise<Settings> {
    return this.#file.read();
  }

  async set(settings: Settings): Promise<DoneAnswer> {
    try {
      await this.#file.update(() => settings);
      return { status: 'done' };
    } catch (error) {
      return failed(reasonOf(error));
    }
  }
}
