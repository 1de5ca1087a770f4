import { Scene, type GameObjects } from 'phaser';

/** The layers of the stage from the ground up. */
export const layers = [
  'deck',
  'before',
  'main',
  'moving',
  'chosen',
  'linked',
  'linkedChosen',
  'over',
] as const;
export type LayerName = (typeof layers)[number];

/** How long one corner gives way to the next, ms; from the look's tokens. */
const crossFade = 240;

/**
 * Shows canvases as layers and nothing else. A layer's canvas is handed over once per change; between changes the loop
 * sleeps, so an idle drawing costs nothing.
 */
export class StageScene extends Scene {
  private readonly images = new Map<LayerName, GameObjects.Image>();
  private shown = 0;
  private running: (() => void) | undefined;

  /** `ready` is called once, when layers can be put. */
  constructor(private readonly ready: () => void) {
    super('stage');
  }

  create(): void {
    this.ready();
  }

  /** Puts a canvas on a layer with its upper left corner at a place, device pixels; undefined empties the layer. */
  put(
    layer: LayerName,
    canvas: HTMLCanvasElement | undefined,
    at: { readonly x: number; readonly y: number } = { x: 0, y: 0 },
  ): void {
    const image = this.imageOf(layer);
    const old = image.texture.key;
    if (canvas) {
      const key = `${layer}.${String(this.shown++)}`;
      this.textures
        .create(key, canvas, canvas.width, canvas.height)
        ?.add('__BASE', 0, 0, 0, canvas.width, canvas.height);
      image.setTexture(key).setPosition(at.x, at.y).setScale(1).setAlpha(1).setVisible(true);
    } else image.setTexture('__DEFAULT').setVisible(false);
    if (old.startsWith(`${layer}.`)) this.textures.remove(old);
  }

  /** Lays the picture as it was over the new one and lets it go. */
  fadeFrom(canvas: HTMLCanvasElement, at: { readonly x: number; readonly y: number }): void {
    this.put('before', canvas, at);
    const image = this.imageOf('before');
    const next = this.imageOf('main');
    next.setAlpha(0);
    this.tweens.add({
      targets: image,
      alpha: 0,
      duration: crossFade,
      onUpdate: () => next.setAlpha(1 - image.alpha),
      onComplete: () => {
        next.setAlpha(1);
        this.put('before', undefined);
      },
    });
  }

  /** Moves and scales the layers of the main picture while a hand is on it, about the point (0, 0) of the stage. */
  nudge(by: { readonly x: number; readonly y: number; readonly scale: number }): void {
    this.cutShort();
    for (const layer of ['main', 'chosen'] as const)
      this.imageOf(layer).setPosition(by.x, by.y).setScale(by.scale);
  }

  /** How much of a layer is seen, 0…1. */
  see(layer: LayerName, alpha: number): void {
    this.imageOf(layer).setAlpha(alpha);
  }

  /** Runs something for so many ms: `frame` gets 0…1, `end` is called once, also when it is cut short. */
  run(length: number, frame: (t: number) => void, end: () => void): void {
    this.cutShort();
    const over = (): void => {
      if (this.running !== over) return;
      this.running = undefined;
      tween.stop();
      end();
    };
    this.running = over;
    const tween = this.tweens.addCounter({
      from: 0,
      to: 1,
      duration: length,
      onUpdate: ({ progress }) => {
        if (this.running === over) frame(progress);
      },
      onComplete: over,
    });
  }

  /** Whatever is running is over at once. */
  cutShort(): void {
    this.running?.();
  }

  busy(): boolean {
    return this.tweens.getTweens().length > 0;
  }

  private imageOf(layer: LayerName): GameObjects.Image {
    const known = this.images.get(layer);
    if (known) return known;
    const image = this.add
      .image(0, 0, '__DEFAULT')
      .setOrigin(0)
      .setDepth(layers.indexOf(layer))
      .setVisible(false);
    this.images.set(layer, image);
    return image;
  }
}
