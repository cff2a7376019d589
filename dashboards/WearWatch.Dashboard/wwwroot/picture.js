// Pictures to take away: a drawing of the page as SVG or PNG, with the colours of the look that it is seen in written into it.
const written = [
  'fill', 'fill-opacity', 'stroke', 'stroke-width', 'stroke-dasharray', 'stroke-opacity', 'opacity',
  'font-family', 'font-size', 'font-weight', 'text-anchor',
];
const scale = 2;

// The drawings of the panel in which a button stands.
function drawings(button) {
  return [...button.closest('.panel').querySelectorAll('svg.desk-chart')].filter(svg => !svg.closest('.legend'));
}

function whole(svg) {
  const copy = svg.cloneNode(true);
  const from = [svg, ...svg.querySelectorAll('*')];
  const to = [copy, ...copy.querySelectorAll('*')];
  from.forEach((element, i) => {
    const style = getComputedStyle(element);
    for (const name of written) to[i].setAttribute(name, style.getPropertyValue(name));
    to[i].removeAttribute('class');
  });
  const { width, height } = svg.viewBox.baseVal;
  copy.setAttribute('width', width);
  copy.setAttribute('height', height);
  const ground = document.createElementNS('http://www.w3.org/2000/svg', 'rect');
  ground.setAttribute('width', width);
  ground.setAttribute('height', height);
  ground.setAttribute('fill', getComputedStyle(svg.closest('.panel')).backgroundColor);
  copy.insertBefore(ground, copy.firstChild);
  return { text: new XMLSerializer().serializeToString(copy), width, height };
}

function name(svg) {
  return (svg.querySelector('title')?.textContent ?? 'picture').toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '');
}

function hand(blob, file) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = file;
  link.click();
  URL.revokeObjectURL(link.href);
}

export function saveSvg(button) {
  for (const svg of drawings(button)) hand(new Blob([whole(svg).text], { type: 'image/svg+xml' }), name(svg) + '.svg');
}

export async function savePng(button) {
  for (const svg of drawings(button)) {
    const { text, width, height } = whole(svg);
    const image = new Image();
    image.src = 'data:image/svg+xml;charset=utf-8,' + encodeURIComponent(text);
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = scale * width;
    canvas.height = scale * height;
    canvas.getContext('2d').drawImage(image, 0, 0, canvas.width, canvas.height);
    hand(await new Promise(done => canvas.toBlob(done, 'image/png')), name(svg) + '.png');
  }
}
