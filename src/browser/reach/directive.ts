/**
 * client:reached: a calculator at rest is the page as it was written, with boxes that can be typed in. Its script is
 * fetched when a hand, a key or a pointer comes to it, or when it is in view and the device holds figures for it. What
 * is typed, chosen or pressed in the meantime is taken up by the form as it comes alive (typed text by
 * islands/kit/state/at-rest.ts, presses here). Left before that, the page holds it for its return.
 */
import { begun, keepBegun } from '../begun.ts';
import { figuresHere } from './figures-here.ts';

type Load = () => Promise<() => Promise<void>>;

const reaching = ['pointerover', 'pointerdown', 'focusin', 'keydown', 'input', 'click'] as const;

export default function reached(load: Load, _: unknown, island: HTMLElement): void {
  const form = island.querySelector<HTMLElement>('.calc');
  if (form) new Resting(load, island, form);
}

/** A switch thrown to and fro was touched on both sides. */
const stands = (box: HTMLInputElement | HTMLSelectElement): boolean => box.type !== 'radio' || box.matches(':checked');

class Resting {
  #asked = false;
  #alive: MutationObserver | undefined;
  /** Buttons and forms pressed before the form could answer, in their order. */
  readonly #pressed: (() => void)[] = [];
  readonly #ends: (() => void)[] = [];
  readonly #load: Load;
  readonly #island: HTMLElement;
  readonly #form: HTMLElement;

  constructor(load: Load, island: HTMLElement, form: HTMLElement) {
    this.#load = load;
    this.#island = island;
    this.#form = form;
    form.querySelector<HTMLFieldSetElement>('.calc-switchable')?.removeAttribute('disabled');
    for (const fold of this.#folds()) fold.open = false;
    form.dataset['live'] = 'rest';
    for (const kind of reaching) this.#on(island, kind, () => this.#wake());
    this.#on(island, 'input', (event) => (event.target as HTMLElement).setAttribute('data-typed', ''));
    this.#on(island, 'click', (event) => this.#hold(event));
    this.#on(island, 'submit', (event) => this.#holdForm(event));
    this.#on(island, 'astro:hydration-error', () => this.#lost());
    this.#on(window, 'pagehide', () => keepBegun(form.id, this.#typed()));
    this.#typeAgain();
    this.#wakeInView();
  }

  #on(at: EventTarget, kind: string, act: (event: Event) => void): void {
    at.addEventListener(kind, act, true);
    this.#ends.push(() => at.removeEventListener(kind, act, true));
  }

  /** Written open for who reads without scripts; folded, as the live form has them. */
  #folds(): readonly HTMLDetailsElement[] {
    return [...this.#form.querySelectorAll<HTMLDetailsElement>('.calc-caution, .calc-working')];
  }

  /** By id of the box. */
  #typed(): Record<string, string> {
    const boxes = this.#form.querySelectorAll<HTMLInputElement | HTMLSelectElement>('[data-typed]');
    return Object.fromEntries([...boxes].filter(stands).map((box) => [box.id, box.value]));
  }

  #typeAgain(): void {
    for (const [id, text] of Object.entries(begun(this.#form.id))) {
      const box = this.#form.querySelector<HTMLInputElement | HTMLSelectElement>(`#${CSS.escape(id)}`);
      if (!box) continue;
      if ('checked' in box && box.type === 'radio') box.checked = true;
      else box.value = text;
      box.setAttribute('data-typed', '');
      this.#wake();
    }
  }

  #wakeInView(): void {
    let inView = false;
    const id = this.#form.id.replace(/-calculator$/, '');
    const look = () => {
      const system = this.#form.querySelector<HTMLInputElement>(`[name="${id}-units"]:checked`)?.value;
      if (inView && (this.#form.dataset['dated'] !== undefined || figuresHere(id, system))) this.#wake();
    };
    // Another saw on the bench fills the form; the strip keeps what was chosen before this turn is over.
    for (const kind of ['change', 'click']) this.#on(document, kind, () => setTimeout(look));
    this.#on(window, 'storage', look);
    // A browser too old to tell what is in view takes everything as in view.
    if (!('IntersectionObserver' in window)) {
      inView = true;
      look();
      return;
    }
    const view = new IntersectionObserver((seen) => {
      inView = seen.some((one) => one.isIntersecting);
      look();
    });
    view.observe(this.#form);
    this.#ends.push(() => view.disconnect());
  }

  #hold(event: Event): void {
    const button = (event.target as HTMLElement).closest('button');
    if (!button || button.type === 'submit') return;
    event.preventDefault();
    event.stopPropagation();
    this.#pressed.push(() => button.click());
  }

  #holdForm(event: Event): void {
    event.preventDefault();
    this.#wake();
    const form = event.target as HTMLFormElement;
    this.#pressed.push(() => form.requestSubmit());
  }

  #wake(): void {
    if (this.#asked) return;
    this.#asked = true;
    this.#island.querySelector('.calc-lost')?.remove();
    let open: readonly HTMLDetailsElement[] = [];
    this.#alive = new MutationObserver(() => {
      if (this.#form.dataset['live'] === 'yes') this.#takenOver(open);
    });
    this.#alive.observe(this.#form, { attributes: true, attributeFilter: ['data-live'] });
    void this.#load().then((hydrate) => {
      open = this.#folds().filter((fold) => fold.open);
      return hydrate();
    });
  }

  #takenOver(open: readonly HTMLDetailsElement[]): void {
    this.#alive?.disconnect();
    for (const end of this.#ends) end();
    keepBegun(this.#form.id, {});
    for (const fold of open) fold.open = true;
    for (const press of this.#pressed) press();
  }

  /** The next touch asks again. */
  #lost(): void {
    this.#alive?.disconnect();
    this.#asked = false;
    const note = document.createElement('p');
    note.className = 'calc-problem calc-lost';
    note.setAttribute('role', 'alert');
    note.textContent = this.#form.dataset['lost'] ?? '';
    this.#island.prepend(note);
    this.#pressed.length = 0;
  }
}
