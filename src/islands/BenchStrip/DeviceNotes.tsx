/** What the device has to say about keeping things: at the foot of the window, so that nothing on the page moves. */
import { useEffect, useState } from 'preact/hooks';
import { deviceState, dismiss, watch, type Trouble } from '../../browser/device/index.ts';
import { siteLink } from '../../browser/site-link.ts';
import { stripWords as say } from '../../words/strip.ts';

export function DeviceNotes() {
  const [state, setState] = useState(deviceState);
  const [closed, setClosed] = useState(false);
  useEffect(() => watch('almanac/', () => setState(deviceState())), []);
  const unkept = state.health !== 'kept' && !closed ? say[state.health] : undefined;
  if (!unkept && state.troubles.length === 0) return null;
  return (
    <div class="device-notes" role="alert">
      {unkept && (
        <p>
          <span>{unkept}</span>
          <a href={siteLink('/job-sheet/')}>{say.toSheet}</a>
          <button type="button" onClick={() => setClosed(true)}>
            {say.close}
          </button>
        </p>
      )}
      {state.troubles.map((t) => (
        <p key={t.what + t.key}>
          <span>{textOf(t)}</span>
          {t.what === 'conflict' ? (
            <>
              <button type="button" onClick={() => t.settle('mine')}>
                {say.keepThis}
              </button>
              <button type="button" onClick={() => t.settle('theirs')}>
                {say.keepOther}
              </button>
            </>
          ) : (
            <button type="button" onClick={() => dismiss(t)}>
              {say.close}
            </button>
          )}
        </p>
      ))}
    </div>
  );
}

function textOf(trouble: Trouble): string {
  if (trouble.what !== 'conflict') return say[trouble.what];
  const parts = new Set(trouble.parts.map((part) => say.parts[part.split('.')[0] ?? ''] ?? say.otherPart));
  return say.conflict([...parts].join(', '));
}
