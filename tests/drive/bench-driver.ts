import type { Point } from '@latchwork/core/base/point';
import { countingIds } from '@latchwork/core/model/ids';
import type { Part } from '@latchwork/core/model/parts/part';
import type { Project } from '@latchwork/core/model/project';
import type { WireEnd } from '@latchwork/core/model/wire';
import { colourText } from '@latchwork/core/model/colour';
import { symbolBox, symbolOf, TITLE_HEIGHT_MM } from '@latchwork/core/derive/symbol';
import type { ToolId } from '@latchwork/core/tools/step-tool';
import { createAppStore, type AppStore } from '../../renderer/app/store';
import type { Camera } from '../../renderer/app/view';
import { toScreen } from '../../renderer/canvas/camera';
import { createDiagramModel } from '../../renderer/canvas/diagram-model';
import { placeBadges, type Badge } from '../../renderer/canvas/scene/badges';
import { buildDiagramScene, type DiagramScene } from '../../renderer/canvas/scene/diagram-scene';
import { pointOn } from '../../renderer/canvas/scene/curve';

const CAMERA: Camera = { x: -500, y: -500, pxPerMm: 4 };

/** A place in words: "X1:3" a cavity, "X1" a title, "W2" the middle of a wire, "XS1" a splice, or a point in mm. */
export type Place = string | Point;

/**
 * The diagram without a screen, driven by what a hand does: real store, real tools, real hit test. Each method says
 * one thing a user does or sees.
 */
export class Bench {
  readonly store: AppStore;
  private readonly model: ReturnType<typeof createDiagramModel>;
  private scene: DiagramScene;
  private badges: readonly Badge[] = [];
  private hand: Point = { x: 0, y: 0 };
  private keys = { alt: false, add: false };

  constructor(project: Project, catalogue: readonly Part[] = []) {
    this.store = createAppStore({ newId: countingIds(700_000), later: (task) => task() });
    this.store.getState().setCatalogue(catalogue);
    this.store.getState().open(project, {});
    this.model = createDiagramModel(this.store, { camera: () => CAMERA, panBy: () => {} });
    this.scene = buildDiagramScene(this.store.getState().harness);
    this.look();
    this.store.subscribe(() => this.look());
  }

  private look(): void {
    const { harness, check } = this.store.getState();
    this.scene = buildDiagramScene(harness, this.scene);
    this.badges = placeBadges(check.findings, this.scene);
    this.model.show(this.scene, this.badges);
  }

  private pointer(on: 'down' | 'move' | 'up', at: Point): void {
    this.hand = at;
    this.model.interaction.pointer({ on, screen: toScreen(CAMERA, at), ...this.keys });
  }

  // What the hand does.

  holding(keys: Partial<{ alt: boolean; add: boolean }>): this {
    this.keys = { ...this.keys, ...keys };
    return this;
  }
  take(tool: ToolId): this {
    this.store.getState().setView({ tool });
    return this;
  }
  press(place: Place): this {
    this.pointer('move', this.where(place));
    this.pointer('down', this.where(place));
    return this;
  }
  pressPin = (place: string): this => this.press(place);
  dragTo(place: Place): this {
    const to = this.where(place);
    const from = this.hand;
    for (const t of [0.3, 0.7, 1])
      this.pointer('move', { x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t });
    return this;
  }
  dragBy(dx: number, dy: number): this {
    return this.dragTo({ x: this.hand.x + dx, y: this.hand.y + dy });
  }
  release(): this {
    this.pointer('up', this.hand);
    this.keys = { alt: false, add: false };
    return this;
  }
  click(place: Place): this {
    return this.press(place).release();
  }
  escape(): this {
    this.model.interaction.cancel();
    return this;
  }
  enter(): this {
    if (this.model.interaction.state.getState().keyWire) this.model.interaction.stepKeyWire('finish');
    else this.model.interaction.startKeyWire();
    return this;
  }
  walk(step: Parameters<ReturnType<typeof createDiagramModel>['interaction']['stepKeyWire']>[0]): this {
    this.model.interaction.stepKeyWire(step);
    return this;
  }
  drop(partNumber: string, place: Place): this {
    const { history, catalogue } = this.store.getState();
    const part = [...history.project.parts, ...catalogue].find((p) => p.partNumber === partNumber);
    if (!part) throw new Error(`There is no part ${partNumber}.`);
    this.model.interaction.drop(part.id, toScreen(CAMERA, this.where(place)), false);
    return this;
  }
  keepAnyway(): this {
    const { question } = this.model.interaction.state.getState();
    this.model.interaction.answer(question?.anyway.call ?? null);
    return this;
  }
  undo(): this {
    this.store.getState().undo();
    return this;
  }

  // What the eye sees.

  wires(): string[] {
    return this.project().wires.map((w) => `${this.endText(w.ends[0])}–${this.endText(w.ends[1])}`);
  }
  colours(): string[] {
    return this.project().wires.map((w) => (w.colour ? colourText(w.colour) : 'none'));
  }
  contactsAt(place: string): string[] {
    const [designator, cavity] = place.split(':');
    const use = this.scene.connectors.find((c) => c.use.resolved.connector.designator === designator)?.use;
    return (
      use?.cavities
        .find((c) => c.cavity === cavity)
        ?.ends.map((e) => e.end.contactPart?.partNumber ?? 'none') ?? []
    );
  }
  mates(): string[] {
    const name = (id: string): string => this.connector(id)?.designator ?? '?';
    return this.project().mates.map((m) => `${name(m.a)}=${name(m.b)}`);
  }
  position(designator: string): Point {
    const c = this.project().connectors.find((x) => x.designator === designator);
    if (!c) throw new Error(`There is no connector ${designator}.`);
    return c.position;
  }
  /** Designators of what is selected; a cavity as "X1:3". */
  selection(): string[] {
    return [...this.store.getState().view.selection].map((key) => {
      const [id = '', cavity] = key.split(':');
      const { connectors, wires, splices, equipment } = this.project();
      const found = [...connectors, ...wires, ...splices, ...equipment].find((o) => o.id === id);
      return `${found?.designator ?? id}${cavity === undefined ? '' : `:${cavity}`}`;
    });
  }
  question(): string | null {
    return this.model.interaction.state.getState().question?.reason ?? null;
  }
  note(): string | null {
    return this.model.interaction.state.getState().note?.reason ?? null;
  }
  refusal(): string | null {
    return this.store.getState().refusal?.reason ?? null;
  }
  steps(): number {
    return this.store.getState().history.undo.length;
  }
  gesture(): string | null {
    return this.model.interaction.state.getState().gesture?.is ?? null;
  }
  badgeKinds(): string[] {
    return this.badges.map((b) => b.kind);
  }
  project(): Project {
    return this.store.getState().history.project;
  }

  private connector(id: string) {
    return this.project().connectors.find((c) => c.id === id);
  }
  private endText(end: WireEnd): string {
    if (end.at === 'cavity') return `${this.connector(end.connector)?.designator ?? '?'}:${end.cavity}`;
    if (end.at === 'splice')
      return this.project().splices.find((s) => s.id === end.splice)?.designator ?? '?';
    return `(${end.position.x},${end.position.y})`;
  }
  private where(place: Place): Point {
    if (typeof place !== 'string') return place;
    const [designator, cavity] = place.split(':');
    const item = this.scene.connectors.find((c) => c.use.resolved.connector.designator === designator);
    if (item) {
      const { part, connector } = item.use.resolved;
      const box = symbolBox(connector, part);
      if (cavity === undefined) return { x: (box.minX + box.maxX) / 2, y: box.minY + TITLE_HEIGHT_MM / 2 };
      const v = symbolOf(part, connector).byCavity.get(cavity);
      if (!v) throw new Error(`${designator} has no cavity ${cavity}.`);
      return { x: box.minX + v.x, y: box.minY + v.y };
    }
    const wire = this.scene.wires.list.find((w) => w.wire.wire.designator === designator);
    if (wire) return pointOn(wire.curve, 0.5);
    const splice = this.scene.splices.find((s) => s.splice.designator === designator);
    if (splice) return splice.splice.position;
    throw new Error(`There is no ${place} on the sheet.`);
  }
}

/** Opens a project on the bench. */
export const bench = {
  open: (project: Project, catalogue?: readonly Part[]): Bench => new Bench(project, catalogue),
};
