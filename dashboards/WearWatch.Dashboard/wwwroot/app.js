// Marks the moment from which clicks are heard: before it, the page is drawn but not yet connected.
export function circuitUp() {
  document.documentElement.dataset.circuit = 'up';
}

// The name under which this browser's entries are kept.
export function signature() {
  return localStorage.getItem('wearwatch-name');
}

export function sign(name) {
  localStorage.setItem('wearwatch-name', name);
}
