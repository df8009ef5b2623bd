// Drawing, and drawing again: on a change of size, of theme, and for paper.
// CSS pixels that fit A4 and Letter, and A3 and tabloid, with the page margins.
var PRINT_WIDTH = 660, SHEET_WIDTH = 1100;

function Drawing(el) {
  var source = JSON.parse(document.getElementById(el.getAttribute('data-chart')).textContent);
  this.el = el;
  this.kind = source.kind;
  this.option = source.option;
  this.data = source.data;
}

// draw leaves out what is folded away; it is drawn when its fold opens.
Drawing.prototype.draw = function (width) {
  if (!this.el.clientWidth) { return; }
  if (!this.chart) { this.chart = echarts.init(this.el, null, { renderer: 'svg' }); }
  this.chart.resize({ width: width || this.el.clientWidth, height: this.el.clientHeight });
  var p = palette(), ctx = { data: this.data, p: p, el: this.el };
  this.chart.setOption(equip(this.kind, painted(this.option, p), ctx), true);
};

function failed(el, err) {
  el.className += ' failed';
  el.textContent = 'This drawing failed. Its numbers are in the table below.';
  var more = el.closest('figure').querySelector('details');
  if (more) { more.open = true; }
  console.error(err);
}

var drawings = [];

function each(paper) {
  drawings.forEach(function (d) {
    var width = !paper ? 0 : d.el.closest('.sheet') ? SHEET_WIDTH : PRINT_WIDTH;
    try { d.draw(width); } catch (err) { failed(d.el, err); }
  });
}

document.querySelectorAll('.plot[data-chart]').forEach(function (el) {
  try { drawings.push(new Drawing(el)); } catch (err) { failed(el, err); }
});
each();

var wide = window.innerWidth;
window.addEventListener('resize', function () {
  if (window.innerWidth !== wide) { wide = window.innerWidth; each(); }
});
window.matchMedia('(prefers-color-scheme: dark)').addEventListener('change', function () { each(); });
window.addEventListener('beforeprint', function () {
  document.documentElement.setAttribute('data-paper', '');
  each(true);
});
document.addEventListener('toggle', function (e) {
  if (!e.target.open) { return; }
  drawings.forEach(function (d) {
    if (!e.target.contains(d.el)) { return; }
    try { d.draw(); } catch (err) { failed(d.el, err); }
  });
}, true);
window.addEventListener('afterprint', function () {
  document.documentElement.removeAttribute('data-paper');
  each();
});
document.documentElement.setAttribute('data-drawn', String(drawings.length));
