// Scans a chain's label within the page. Where the camera is refused or absent it says so, and the list stands in its place.
import { codeReader } from './code-reader.js';
import { h, linkButton } from './dom.js';
import { chainList } from './find-page.js';
import { positionIn, screenOf } from './label-address.js';
import { t } from './language.js';

const pause = 120;

export function scanPage({ plant, onLeave }) {
  const video = h('video', { playsinline: true, 'aria-label': t`Picture of the camera` });
  video.muted = true;
  const told = h('p', { role: 'status' });
  const place = h('section', { class: 'scanner' }, video, told,
    linkButton(t`Find the chain by name`, '#/find', { class: 'button big' }));
  let stream = null;
  let turn = 0;
  const stop = () => {
    turn++;
    stream?.getTracks().forEach(track => track.stop());
    stream = null;
  };
  const wake = () => (document.visibilityState === 'visible' ? watch() : stop());
  // In a pocket no camera runs.
  document.addEventListener('visibilitychange', wake);
  onLeave(() => {
    document.removeEventListener('visibilitychange', wake);
    stop();
  });
  watch();
  return [h('h1', { tabindex: '-1' }, t`Scan label`), place];

  async function watch() {
    stop();
    const mine = turn;
    told.replaceChildren(t`Allow the camera, if you are asked.`);
    try {
      const read = await codeReader();
      const opened = await navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment', width: { ideal: 1280 } } });
      if (mine !== turn) {
        opened.getTracks().forEach(track => track.stop());
        return;
      }

      stream = opened;
      video.srcObject = opened;
      await video.play();
      told.replaceChildren(t`Hold the label into the picture.`);
      while (mine === turn && !found(await read(video))) await new Promise(done => setTimeout(done, pause));
    } catch (error) {
      if (mine === turn) instead(error);
    }
  }

  function found(texts) {
    const position = texts.map(positionIn).find(Boolean);
    if (position) location.replace(screenOf(position));
    else if (texts.length > 0) told.replaceChildren(t`This code is not a chain’s label.`);
    return Boolean(position);
  }

  function instead(error) {
    console.warn(error);
    stop();
    place.replaceWith(h('p', { role: 'alert' }, error.name === 'NotAllowedError'
      ? t`The camera is not allowed. Allow it in the browser’s settings, or find the chain here.`
      : t`No camera can be used. Find the chain here.`), ...chainList(plant));
  }
}
