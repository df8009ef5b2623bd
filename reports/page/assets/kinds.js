// What each kind adds to an option that came as data: functions for the series
// with a given id, and limits that depend on the width of the drawing.
var MAKERS = { bars: crossBars, names: names, segments: segments, cells: cells, spans: spans, shares: shares,
  shades: shades, stretches: stretches, loads: loads };
var KINDS = {
  points: ['bars', 'names'],
  band: [],
  lines: [],
  segments: ['segments'],
  grid: ['cells'],
  intervals: ['spans'],
  pareto: ['shares'],
  gantt: ['shades', 'stretches'],
  loads: ['loads']
};

function equip(kind, option, ctx) {
  ctx.kind = kind;
  option.series.forEach(function (s) {
    if (KINDS[kind].indexOf(s.id) >= 0) { s.renderItem = MAKERS[s.id](ctx); }
  });
  var tip = option.tooltip;
  tip.formatter = TIPS[kind] ? TIPS[kind](ctx, option) : tipFor(ctx.data.tips);
  tip.backgroundColor = ctx.p['@paper'];
  tip.borderColor = ctx.p['@rule'];
  tip.padding = [6, 10];
  tip.confine = true;
  tip.transitionDuration = 0;
  option.xAxis.axisLabel.margin = 12; // clear of the lowest label of the other axis
  fitAxis(option.xAxis, ctx);
  fitAxis(option.yAxis, ctx);
  option.grid = margins(option, ctx);
  option.textStyle = { fontFamily: ctx.p.font };
  return option;
}

// fitAxis gives an axis its labels: digits and unit of numbers, dates of
// moments, and names of rows folded to the room they have.
function fitAxis(axis, ctx) {
  var look = axis.axisLabel, data = ctx.data;
  if (axis.type === 'time' || ctx.kind === 'gantt' && axis.type === 'value') {
    look.formatter = moment;
  } else if (axis.type === 'value') {
    look.formatter = numbers(data[axis.id + 'Digits'] || 0, data[axis.id + 'Unit'] || '');
  } else if (axis.id === 'rows') {
    var room = Math.min(190, ctx.el.clientWidth * 0.34), lines = Math.max(1, Math.floor(rowHeight(axis, ctx) / LINE));
    look.formatter = function (name) { return wrapped(name, axisFont(ctx), room, lines); };
    look.lineHeight = LINE;
    look.interval = 0;
    look.hideOverlap = false;
  } else {
    look.formatter = function (name) { return wrapped(name, axisFont(ctx), 96, 1); };
  }
}

var BELOW = 30, ABOVE = 10;

function axisFont(ctx) { return '12px ' + ctx.p.font; }

function rowHeight(axis, ctx) { return (ctx.el.clientHeight - BELOW - ABOVE) / axis.data.length; }

function numbers(digits, unit) {
  return function (v) {
    return v.toLocaleString('en-US', { minimumFractionDigits: digits, maximumFractionDigits: digits }).replace('-', '−') + unit;
  };
}

var DAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];
var MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

// moment is a day at midnight, else an hour; plans have no time zone, so UTC.
function moment(ms) {
  var d = new Date(ms);
  if (ms % 86400000 === 0) { return DAYS[d.getUTCDay()] + ' ' + MONTHS[d.getUTCMonth()] + ' ' + d.getUTCDate(); }
  return ('0' + d.getUTCHours()).slice(-2) + ':' + ('0' + d.getUTCMinutes()).slice(-2);
}

// margins leaves exactly the room that the labels of both axes take.
function margins(option, ctx) {
  var x = option.xAxis, left = widest(tickTexts(option.yAxis), ctx) + 12, right = 8;
  var ends = x.type === 'category' ? [x.data[0], x.data[x.data.length - 1]] : [x.min, x.max];
  ends = ends.map(function (v) { return x.axisLabel.formatter(v); });
  if (x.type !== 'category' || x.boundaryGap === false) {
    left = Math.max(left, widest(ends.slice(0, 1), ctx) / 2 + 2);
    right = Math.max(right, widest(ends.slice(1), ctx) / 2 + 2);
  }
  if (ctx.kind === 'intervals' || ctx.kind === 'loads') { right = Math.max(right, widest(ctx.data.labels, ctx) + 12); }
  return { left: left, right: right, top: ABOVE, bottom: BELOW, outerBoundsMode: 'none' };
}

function tickTexts(axis) {
  if (axis.type === 'category') { return axis.data.map(function (n) { return axis.axisLabel.formatter(n); }); }
  var out = [];
  for (var v = axis.min; v < axis.max + axis.interval / 2; v += axis.interval) { out.push(axis.axisLabel.formatter(v)); }
  return out;
}

function widest(texts, ctx) {
  return texts.reduce(function (w, t) { return Math.max(w, textSize(t, axisFont(ctx)).width); }, 0);
}
