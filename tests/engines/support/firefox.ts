/** Firefox as the distribution ships it, over WebDriver BiDi (W3C working draft), which it speaks by itself. */
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Tab } from './tab.ts';

/** It asks nobody anything, and pages opened from disk are kept apart as for any reader. */
const settings = {
  'security.fileuri.strict_origin_policy': true,
  'app.update.enabled': false,
  'browser.shell.checkDefaultBrowser': false,
  'browser.startup.page': 0,
  'datareporting.policy.dataSubmissionEnabled': false,
  'network.captive-portal-service.enabled': false,
  'network.connectivity-service.enabled': false,
  'services.settings.server': 'data:,',
};

/**
 * Leaving a page drops what it was still loading: NS_BINDING_ABORTED, or, where the site's worker was to answer, a load
 * that has no address any more. One that failed is told with its address.
 */
const dropped = /status=2152398850|^Failed to load ‘’\./;

export async function openFirefox(program: string): Promise<Tab> {
  const profile = mkdtempSync(join(tmpdir(), 'almanac-firefox-'));
  const lines = Object.entries(settings).map(([name, value]) => `user_pref("${name}", ${JSON.stringify(value)});`);
  writeFileSync(join(profile, 'user.js'), lines.join('\n'));
  const child = spawn(program, ['--headless', '--no-remote', '--profile', profile, '--remote-debugging-port', '0'], {
    env: { ...process.env, HOME: profile },
  });
  const ended = new Promise<void>((done) => child.on('close', () => done()));
  const address = await new Promise<string>((done, failed) => {
    let said = '';
    child.stderr.on('data', (piece) => {
      said += String(piece);
      const found = /BiDi listening on (ws:\/\/\S+)/.exec(said)?.[1];
      if (found) done(found);
    });
    child.on('close', () => failed(new Error(`Firefox ended: ${said.slice(-500)}`)));
    child.on('error', failed);
  });
  const wire = await Wire.to(`${address}/session`);
  await wire.ask('session.new', { capabilities: {} });
  // A tab of our own: in the one Firefox begins with, the address bar keeps the focus, so no box ever has it or loses it.
  const { context } = (await wire.ask('browsingContext.create', { type: 'tab' })) as { context: string };
  const heard: string[] = [];
  wire.onEvent = (method, params) => {
    const { level, text } = params as { level?: string; text?: string };
    if (method !== 'log.entryAdded' || level !== 'error' || dropped.test(text ?? '')) return;
    heard.push(text ?? 'an error without words');
  };
  await wire.ask('session.subscribe', { events: ['log.entryAdded'] });
  return {
    open: async (url) => void (await wire.ask('browsingContext.navigate', { context, url, wait: 'complete' })),
    run: async (expression) => {
      const answer = (await wire.ask('script.evaluate', {
        expression: `(async () => JSON.stringify((await (${expression})) ?? null))()`,
        target: { context },
        awaitPromise: true,
      })) as { result?: { value?: string }; exceptionDetails?: { text: string } };
      if (answer.exceptionDetails) throw new Error(`${answer.exceptionDetails.text} in ${expression}`);
      return JSON.parse(answer.result?.value ?? 'null') as unknown;
    },
    act: async (actions) => void (await wire.ask('input.performActions', { context, actions })),
    troubles: () => heard.splice(0),
    close: async () => {
      await wire.ask('browser.close', {}).catch(() => undefined);
      child.kill();
      await ended;
      rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}

interface Answer {
  readonly id?: number;
  readonly type: string;
  readonly method?: string;
  readonly params?: unknown;
  readonly result?: unknown;
  readonly error?: string;
  readonly message?: string;
}

/** Commands out, answers and events in, over one socket. */
class Wire {
  onEvent: (method: string, params: unknown) => void = () => undefined;
  readonly #socket: WebSocket;
  readonly #waiting = new Map<number, { done: (result: unknown) => void; failed: (reason: Error) => void }>();
  #last = 0;

  private constructor(socket: WebSocket) {
    this.#socket = socket;
    socket.addEventListener('message', ({ data }) => this.#hear(JSON.parse(String(data)) as Answer));
    socket.addEventListener('close', () => {
      for (const { failed } of this.#waiting.values()) failed(new Error('The browser hung up.'));
    });
  }

  static to(address: string): Promise<Wire> {
    const socket = new WebSocket(address);
    return new Promise((done, failed) => {
      socket.addEventListener('open', () => done(new Wire(socket)));
      socket.addEventListener('error', () => failed(new Error(`No answer at ${address}`)));
    });
  }

  ask(method: string, params: object): Promise<unknown> {
    const id = ++this.#last;
    this.#socket.send(JSON.stringify({ id, method, params }));
    return new Promise((done, failed) => this.#waiting.set(id, { done, failed }));
  }

  #hear(answer: Answer): void {
    if (answer.type === 'event') return this.onEvent(answer.method ?? '', answer.params);
    const waiting = this.#waiting.get(answer.id ?? -1);
    this.#waiting.delete(answer.id ?? -1);
    if (answer.type === 'success') waiting?.done(answer.result);
    else waiting?.failed(new Error(`${answer.error ?? ''}: ${answer.message ?? ''}`));
  }
}
