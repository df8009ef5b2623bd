// Shapes of the floor: what molds do hour by hour, and crafts and places week by
// week.

// shades draws, behind the bars, the stretches of ctx.data.shades, [from, to]
// in minutes after ctx.data.from.
function shades(ctx) {
  return function (params, api) {
    var box = params.coordSys;
    return {
      type: 'group', silent: true,
      children: ctx.data.shades.map(function (s) {
        var a = api.coord([at(ctx, s[0]), 0])[0], b = api.coord([at(ctx, s[1]), 0])[0];
        return { type: 'rect', shape: { x: a, y: box.y, width: b - a, height: box.height }, style: { fill: ctx.p['@rule'], opacity: 0.45 } };
      })
    };
  };
}

function at(ctx, minutes) { return ctx.data.from + minutes * 60000; }

// stretches: value is [start, end, row, kind, thin, label]; start and end in
// minutes, label the index of a text. Of thin, 1 is a wait, 2 one for the next shift: a
// line.
function stretches(ctx) {
  var font = '500 12px ' + ctx.p.font;
  return function (params, api) {
    var a = api.coord([at(ctx, api.value(0)), api.value(2)]), b = api.coord([at(ctx, api.value(1)), api.value(2)]);
    var thin = api.value(4), h = Math.min(api.size([0, 1])[1] * [0.74, 0.3, 0.08][thin], [26, 10, 2.5][thin]);
    var rect = echarts.graphic.clipRectByRect(
      { x: a[0], y: a[1] - h / 2, width: Math.max(b[0] - a[0], 0.75), height: h }, params.coordSys);
    if (!rect) { return null; }
    var fill = ctx.p['@c' + api.value(3)];
    var children = [{ type: 'rect', shape: rect, style: { fill: fill, decal: rect.width > 6 && thin < 2 ? decal(api.value(3), ctx.p['@paper']) : null } }];
    var text = thin ? '' : ctx.data.labels[api.value(5)], size = text ? textSize(text, font) : null;
    if (size && size.width + 6 < rect.width && size.height <= rect.height) {
      children.push(label(text, rect.x + rect.width / 2, rect.y + rect.height / 2, readable(fill), font,
        { align: 'center', backgroundColor: fill, padding: [1, 2], borderRadius: 2 }));
    }
    if (thin) { // the pointer finds it in the whole height of a bar
      children.push({ type: 'rect', shape: { x: rect.x, y: a[1] - 12, width: rect.width, height: 24 }, style: { fill: fill, opacity: 0 } });
    }
    return { type: 'group', children: children };
  };
}

// loads: value is [week, row, share, wait]. Above, a cell from pale to strong by
// the share in use; below it a column as high as the wait, on one scale for all
// rows. A week without share, below 0, has no cell.
function loads(ctx) {
  var most = ctx.data.most || 1, span = ctx.data.high - ctx.data.low || 1;
  return function (params, api) {
    var c = api.coord([api.value(0), api.value(1)]), s = api.size([1, 1]);
    var w = Math.max(s[0] - (s[0] > 8 ? 1 : 0.25), 0.5), x = c[0] - w / 2, top = c[1] - s[1] * 0.43, foot = c[1] + s[1] * 0.43;
    var rise = s[1] * 0.5 * Math.min(1, api.value(3) / most), children = [];
    if (api.value(2) >= 0) {
      var t = Math.max(0, Math.min(1, (api.value(2) - ctx.data.low) / span));
      children.push({ type: 'rect', shape: { x: x, y: top, width: w, height: s[1] * 0.3 }, style: { fill: blend(ctx.p['@ramp0'], ctx.p['@ramp1'], t) } });
    }
    if (rise > 0) {
      children.push({ type: 'rect', shape: { x: x, y: foot - rise, width: w, height: rise }, style: { fill: ctx.p['@c3'] } });
    }
    children.push({ type: 'rect', shape: { x: c[0] - s[0] / 2, y: foot, width: s[0], height: 1 }, style: { fill: ctx.p['@rule'] } });
    if (api.value(0) === ctx.data.last) {
      children.push(label(ctx.data.labels[api.value(1)], params.coordSys.x + params.coordSys.width + 8, c[1] + s[1] * 0.2, ctx.p['@ink'], '12px ' + ctx.p.font));
    }
    // What the pointer finds is the whole cell.
    children.push({ type: 'rect', shape: { x: c[0] - s[0] / 2, y: top, width: s[0], height: foot - top }, style: { fill: ctx.p['@paper'], opacity: 0 } });
    return { type: 'group', children: children };
  };
}

// TIPS are the kinds whose tips are made from the values instead of being sent.
var TIPS = {
  gantt: function (ctx, option) {
    return function (one) {
      var v = one.value, rows = [[ctx.data.kinds[v[3]], ctx.data.labels[v[5]]]];
      if (rows[0][0] === rows[0][1]) { rows[0].pop(); }
      rows.push(['from', stamp(at(ctx, v[0]))], ['to', stamp(at(ctx, v[1]))]);
      return tipNode({ head: option.yAxis.data[v[2]], rows: rows });
    };
  },
  loads: function (ctx, option) {
    return function (one) {
      var v = one.value, rows = [['work waits', numbers(0, ' h')(v[3])]];
      if (v[2] >= 0) { rows.unshift(['in use', numbers(0, ' %')(v[2])]); }
      rows.unshift([ctx.data.weeks[v[0]], '']);
      return tipNode({ head: option.yAxis.data[v[1]], rows: rows });
    };
  }
};

// stamp is a day with its hour.
function stamp(ms) {
  var d = new Date(ms), day = ms - (ms % 86400000);
  return moment(day) + ' ' + ('0' + d.getUTCHours()).slice(-2) + ':' + ('0' + d.getUTCMinutes()).slice(-2);
}
