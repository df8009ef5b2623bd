// Shapes that echarts draws for custom series. Each maker returns a renderItem
// function; ctx holds {data, p, font, el}.

// The patterns match the classes p0 to p7 of the style sheet.
function decal(n, paper) {
  var quarter = Math.PI / 4, thin = { symbol: 'rect', color: alpha(paper, 0.62), dashArrayX: [1, 0], dashArrayY: [1.5, 4.5] };
  function turned(angle, y) { return Object.assign({}, thin, { rotation: angle, dashArrayY: y || thin.dashArrayY }); }
  switch (n) {
    case 1: return turned(-quarter);
    case 2: return { symbol: 'circle', symbolSize: 0.8, color: thin.color, dashArrayX: [[3, 3], [0, 3, 3, 0]], dashArrayY: [3, 3] };
    case 3: return turned(quarter);
    case 4: return turned(Math.PI / 2);
    case 5: return turned(0, [1.5, 2.5]);
    case 6: return { symbol: 'circle', symbolSize: 0.5, color: thin.color, dashArrayX: [[6, 6], [0, 6, 6, 0]], dashArrayY: [6, 6] };
    case 7: return turned(-quarter, [1.2, 2]);
  }
  return null;
}

function alpha(hex, a) { return 'rgba(' + channels(hex).join(',') + ',' + a + ')'; }

function line(x1, y1, x2, y2, style) {
  return { type: 'line', shape: { x1: x1, y1: y1, x2: x2, y2: y2 }, style: style };
}

function label(text, x, y, fill, font, more) {
  return { type: 'text', silent: true, style: Object.assign({ text: text, x: x, y: y, fill: fill, font: font, lineHeight: LINE, verticalAlign: 'middle' }, more) };
}

// whisker is an I-shaped error bar between two pixels.
function whisker(a, b, across, style) {
  var c = across / 2;
  return a[1] === b[1]
    ? [line(a[0], a[1], b[0], b[1], style), line(a[0], a[1] - c, a[0], a[1] + c, style), line(b[0], b[1] - c, b[0], b[1] + c, style)]
    : [line(a[0], a[1], b[0], b[1], style), line(a[0] - c, a[1], a[0] + c, a[1], style), line(b[0] - c, b[1], b[0] + c, b[1], style)];
}

// crossBars: value is [x, y, xLow, xHigh, yLow, yHigh, color].
function crossBars(ctx) {
  return function (params, api) {
    var v = function (i) { return api.value(i); };
    var style = { stroke: ctx.p['@c' + v(6)], lineWidth: 1.25, opacity: 0.75, fill: null };
    return {
      type: 'group', silent: true,
      children: whisker(api.coord([v(2), v(1)]), api.coord([v(3), v(1)]), 7, style)
        .concat(whisker(api.coord([v(0), v(4)]), api.coord([v(0), v(5)]), 7, style))
    };
  };
}

// names draws all point names at once, since each must know the others. When
// they do not fit, points get numbers and the names are listed below.
function names(ctx) {
  return function (params, api) {
    var font = '500 12.5px ' + ctx.p.font, box = params.coordSys, data = ctx.data.points;
    var points = data.map(function (d) { var c = api.coord([d.x, d.y]); return { x: c[0], y: c[1] }; });
    var bars = [];
    data.forEach(function (d) {
      var a = api.coord([d.xLow, d.yLow]), b = api.coord([d.xHigh, d.yHigh]), c = api.coord([d.x, d.y]);
      bars.push({ x1: a[0], y1: c[1], x2: b[0], y2: c[1] }, { x1: c[0], y1: a[1], x2: c[0], y2: b[1] });
    });
    (ctx.data.joins || []).forEach(function (path) {
      for (var i = 1; i < path.length; i++) {
        var a = api.coord(path[i - 1]), b = api.coord(path[i]);
        bars.push({ x1: a[0], y1: a[1], x2: b[0], y2: b[1], fine: true });
      }
    });
    var texts = data.map(function (d) { return folded(d.name, font, Math.min(180, box.width * 0.4)); });
    var places = placeNames(points, bars, texts, box, font, box.width < 420);
    list(ctx.el, places ? [] : data.map(function (d) { return d.name; }));
    if (!places) {
      points = together(points);
      texts = points.map(function (g) { return folded(g.of.join(', '), font, Math.min(110, box.width * 0.3)); });
      places = placeNames(points, bars, texts, box, font, false) || [];
    }
    var children = [];
    places.forEach(function (s, i) {
      if (s.far) {
        children.push(line(s.leader.x1, s.leader.y1, s.leader.x2, s.leader.y2, { stroke: ctx.p['@muted'], lineWidth: 1, opacity: 0.8 }));
      }
      children.push(label(texts[i], s.rect.x + 1, s.rect.y + s.rect.height / 2, ctx.p['@ink'], font, { stroke: ctx.p['@paper'], lineWidth: 3 }));
    });
    return { type: 'group', silent: true, children: children };
  };
}

// together joins points that lie on one another, so that they share one label:
// where each lies, and the numbers of those that it stands for.
function together(points) {
  var groups = [];
  points.forEach(function (p, i) {
    var near = groups.filter(function (g) { return Math.hypot(g.x - p.x, g.y - p.y) < 7; });
    if (near.length > 0) {
      near[0].of.push(i + 1);
    } else {
      groups.push({ x: p.x, y: p.y, of: [i + 1] });
    }
  });
  return groups;
}

// list writes numbered names under the drawing, or hides the list.
function list(el, texts) {
  var ol = el.parentNode.querySelector('.names');
  ol.textContent = '';
  ol.hidden = texts.length === 0;
  texts.forEach(function (text, i) {
    var li = document.createElement('li'), n = document.createElement('b');
    n.textContent = i + 1;
    li.appendChild(n);
    li.appendChild(document.createTextNode(text));
    ol.appendChild(li);
  });
}

// segments: value is [start, end, row, color, pattern]; drawn only as far as
// the plot reaches, with the text of ctx.data.labels where it fits.
function segments(ctx) {
  var font = '500 12px ' + ctx.p.font;
  return function (params, api) {
    var a = api.coord([api.value(0), api.value(2)]), b = api.coord([api.value(1), api.value(2)]);
    var h = Math.min(api.size([0, 1])[1] * 0.68, 40);
    var rect = echarts.graphic.clipRectByRect(
      { x: a[0], y: a[1] - h / 2, width: Math.max(b[0] - a[0], 0.5), height: h }, params.coordSys);
    if (!rect) { return null; }
    var fill = ctx.p['@c' + api.value(3)], mark = decal(api.value(4), ctx.p['@paper']);
    var children = [{ type: 'rect', shape: rect, style: { fill: fill, decal: mark, stroke: ctx.p['@paper'], lineWidth: rect.width > 3 ? 1 : 0 } }];
    var text = ctx.data.labels[params.dataIndex], size = text ? textSize(text, font) : null;
    if (size && size.width + 8 < rect.width && size.height <= rect.height) {
      children.push(label(text, rect.x + rect.width / 2, rect.y + rect.height / 2, readable(fill), font,
        { align: 'center', backgroundColor: fill, padding: [1, 3], borderRadius: 2 }));
    }
    return { type: 'group', children: children };
  };
}

// cells: value is [column, row, value]; ctx.data.low and high span the ramp.
function cells(ctx) {
  var font = '12px ' + ctx.p.font, span = ctx.data.high - ctx.data.low || 1;
  return function (params, api) {
    var c = api.coord([api.value(0), api.value(1)]), s = api.size([1, 1]);
    var t = Math.max(0, Math.min(1, (api.value(2) - ctx.data.low) / span));
    var fill = blend(ctx.p['@ramp0'], ctx.p['@ramp1'], t);
    var children = [{
      type: 'rect', shape: { x: c[0] - s[0] / 2, y: c[1] - s[1] / 2, width: s[0], height: s[1] },
      style: { fill: fill, stroke: ctx.p['@paper'], lineWidth: s[0] > 12 ? 1.5 : 0.5 }
    }];
    var text = ctx.data.labels[params.dataIndex], size = textSize(text, font);
    if (size.width <= s[0] && size.height <= s[1]) {
      children.push(label(text, c[0], c[1], readable(fill), font, { align: 'center' }));
    }
    return { type: 'group', children: children };
  };
}

// spans: value is [value, row, low, high]; the text stands right of the bar.
function spans(ctx) {
  var font = '12px ' + ctx.p.font;
  return function (params, api) {
    var a = api.coord([api.value(2), api.value(1)]), b = api.coord([api.value(3), api.value(1)]);
    var m = api.coord([api.value(0), api.value(1)]), h = Math.min(api.size([0, 1])[1] * 0.3, 10);
    var children = whisker(a, b, h, { stroke: ctx.p['@ink'], lineWidth: 1.5, fill: null });
    if (ctx.data.dots) {
      children.push({ type: 'circle', shape: { cx: m[0], cy: m[1], r: 5 }, style: { fill: ctx.p['@accent'], stroke: ctx.p['@paper'], lineWidth: 1.5 } });
    }
    var text = ctx.data.labels[params.dataIndex];
    children.push(label(text, Math.max(a[0], b[0], m[0]) + 8, m[1], ctx.p['@ink'], font, { stroke: ctx.p['@paper'], lineWidth: 3 }));
    return { type: 'group', silent: true, children: children };
  };
}

// shares: value is [share, row, sum]; a bar from 0, its text inside where it
// fits, else right of the bar when the running sum leaves room.
function shares(ctx) {
  var font = '500 12px ' + ctx.p.font;
  return function (params, api) {
    var a = api.coord([0, api.value(1)]), b = api.coord([api.value(0), api.value(1)]), c = api.coord([api.value(2), api.value(1)]);
    var h = Math.min(api.size([0, 1])[1] * 0.68, 32), w = b[0] - a[0], fill = ctx.p['@c0'];
    var children = [{ type: 'rect', shape: { x: a[0], y: a[1] - h / 2, width: Math.max(w, 0.5), height: h }, style: { fill: fill } }];
    var text = ctx.data.labels[params.dataIndex], size = textSize(text, font);
    if (size.width + 12 < w) {
      children.push(label(text, a[0] + 6, a[1], readable(fill), font));
    } else if (size.width + 18 < c[0] - b[0]) {
      children.push(label(text, b[0] + 6, a[1], ctx.p['@ink'], font, { stroke: ctx.p['@paper'], lineWidth: 3 }));
    }
    return { type: 'group', children: children };
  };
}
