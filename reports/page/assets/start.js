// Drawing, and drawing again: on a change of size, of theme, and for paper.
var PRINT_WIDTH = 660; // CSS pixels that fit A4 and Letter with the page margins

function Drawing(el) {
  var source = JSON.parse(document.getElementById(el.getAttribute('data-chart')).textContent);
  this.el = el;
  this.kind = source.kind;
  this.option = source.option;
  this.data = source.data;
  this.chart = echarts.init(el, null, { renderer: 'svg' });
}

Drawing.prototype.draw = function (width) {
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

function each(width) {
  drawings.forEach(function (d) {
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
  each(PRINT_WIDTH);
});
window.addEventListener('afterprint', function () {
  document.documentElement.removeAttribute('data-paper');
  each();
});
document.documentElement.setAttribute('data-drawn', String(drawings.length));
