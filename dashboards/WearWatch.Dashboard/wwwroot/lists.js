// The rows that a list shows, as a file for a spreadsheet: the columns that are seen, in the person's own words and figures.
document.addEventListener('click', event => {
  const button = event.target.closest?.('[data-csv]');
  const table = button?.closest('.list')?.querySelector('table');
  if (!table) return;
  const heads = [...table.tHead.rows[0].cells].map(headOf);
  const lines = [heads, ...[...table.rows].slice(1).map(valuesOf)]
    .map(row => row.filter((_, i) => heads[i]).map(quoted).join(button.dataset.csv));
  save(`${button.dataset.file}.csv`, lines.join('\r\n'));
});

// Empty for a column that is hidden, or whose head is only heard: one of buttons.
function headOf(cell) {
  const copy = cell.cloneNode(true);
  for (const aside of copy.querySelectorAll('.unseen, svg')) aside.remove();
  return cell.offsetWidth > 0 ? plain(copy.textContent) : '';
}

function valuesOf(row) {
  return [...row.cells].flatMap(cell => [plain(cell.innerText), ...Array(cell.colSpan - 1).fill('')]);
}

function plain(text) {
  return text.replace(/\s+/gu, ' ').trim();
}

// What a spreadsheet would run is made a text; a figure below zero stays one.
function quoted(text) {
  const safe = /^[=+@]|^-(?![\d.,])/u.test(text) ? `'${text}` : text;
  return /[",;]/u.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

function save(name, text) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob(['\uFEFF', text, '\r\n'], { type: 'text/csv;charset=utf-8' }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
