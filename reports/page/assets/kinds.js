// What each kind adds to an option that came as data: functions for the series
// with a given id, and limits that depend on the width of the drawing.
var MAKERS = { bars: crossBars, names: names, segments: segments, cells: cells, spans: spans, shares: shares };
var KINDS = {
  points: ['bars', 'names'],
  band: [],
  lines: [],
  segments: ['segments'],
  grid: ['cells'],
  intervals: ['spans'],
  pareto: ['shares']
};

function equip(kind, option, ctx) {
  option.series.forEach(function (s) {
    if (KINDS[kind].indexOf(s.id) >= 0) { s.renderItem = MAKERS[s.id](ctx); }
  });
  var tip = option.tooltip;
  tip.formatter = tipFor(ctx.data.tips);
  tip.backgroundColor = ctx.p['@paper'];
  tip.borderColor = ctx.p['@rule'];
  tip.padding = [6, 10];
  tip.confine = true;
  tip.transitionDuration = 0;
  [].concat(option.xAxis, option.yAxis).forEach(function (axis) { fitAxis(axis, ctx); });
  option.textStyle = { fontFamily: ctx.p.font };
  return option;
}

// fitAxis sets digits of numbers, and the room for names of rows.
function fitAxis(axis, ctx) {
  var look = axis.axisLabel;
  if (axis.type === 'value' && typeof ctx.data[axis.id + 'Digits'] === 'number') {
    var digits = ctx.data[axis.id + 'Digits'], unit = ctx.data[axis.id + 'Unit'] || '';
    look.formatter = function (v) {
      return v.toLocaleString('en-US', { minimumFractionDigits: digits, maximumFractionDigits: digits }) + unit;
    };
  }
  if (axis.id === 'rows') {
    look.width = Math.round(Math.min(190, ctx.el.clientWidth * 0.3));
    look.overflow = 'break';
    look.interval = 0;
  }
}
