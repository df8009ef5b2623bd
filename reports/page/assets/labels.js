// Placing the names of points so that none covers another name or a point.

var LINE = 15; // pixels from line to line of every text that may have several

function textSize(text, font) {
  var r = echarts.format.getTextRect(text, font);
  return { width: Math.ceil(r.width) + 2, height: LINE * text.split('\n').length };
}

// folded breaks a long name into two lines at the space nearest the middle.
function folded(text, font, limit) {
  if (textSize(text, font).width <= limit) { return text; }
  var best = -1;
  for (var i = 1; i < text.length - 1; i++) {
    if (text[i] === ' ' && Math.abs(i - text.length / 2) < Math.abs(best - text.length / 2)) { best = i; }
  }
  return best < 0 ? text : text.slice(0, best) + '\n' + text.slice(best + 1);
}

// wrapped breaks a text into lines of at most room pixels, between words where
// it can; what does not fit into the lines is cut with an ellipsis.
function wrapped(text, font, room, most) {
  var lines = [], current = '';
  function fits(s) { return textSize(s, font).width <= room; }
  text.split(' ').forEach(function (word) {
    var next = current ? current + ' ' + word : word;
    if (fits(next)) { current = next; return; }
    if (current) { lines.push(current); }
    current = '';
    Array.from(word).forEach(function (letter) {
      if (current && !fits(current + letter)) { lines.push(current); current = ''; }
      current += letter;
    });
  });
  lines.push(current);
  if (lines.length <= most) { return lines.join('\n'); }
  var last = Array.from(lines[most - 1]);
  while (last.length && !fits(last.join('') + '…')) { last.pop(); }
  return lines.slice(0, most - 1).concat(last.join('') + '…').join('\n');
}

function overlap(a, b, pad) {
  return a.x < b.x + b.width + pad && b.x < a.x + a.width + pad &&
    a.y < b.y + b.height + pad && b.y < a.y + a.height + pad;
}

function inside(r, box) {
  return r.x >= box.x && r.y >= box.y && r.x + r.width <= box.x + box.width && r.y + r.height <= box.y + box.height;
}

// crosses reports whether the segment passes through the rectangle, by
// sampling every few pixels.
function crosses(s, r, pad) {
  var n = Math.ceil(Math.max(Math.abs(s.x2 - s.x1), Math.abs(s.y2 - s.y1)) / 4) + 1;
  for (var i = 0; i <= n; i++) {
    var t = i / n, x = s.x1 + (s.x2 - s.x1) * t, y = s.y1 + (s.y2 - s.y1) * t;
    if (x > r.x - pad && x < r.x + r.width + pad && y > r.y - pad && y < r.y + r.height + pad) { return true; }
  }
  return false;
}

// spot is the label rectangle at an angle and distance from a point, and the
// leader from the point to its nearest edge.
function spot(p, size, angle, distance) {
  var dx = Math.cos(angle), dy = Math.sin(angle);
  var x = p.x + dx * distance + (dx > 0.3 ? 0 : dx < -0.3 ? -size.width : -size.width / 2);
  var y = p.y + dy * distance + (dy > 0.3 ? 0 : dy < -0.3 ? -size.height : -size.height / 2);
  var rect = { x: Math.round(x), y: Math.round(y), width: size.width, height: size.height };
  return {
    rect: rect,
    leader: {
      x1: p.x, y1: p.y,
      x2: Math.max(rect.x, Math.min(p.x, rect.x + rect.width)),
      y2: Math.max(rect.y, Math.min(p.y, rect.y + rect.height))
    }
  };
}

var DISTANCES = [9, 14, 20, 28, 38, 50, 64, 80, 100];
var ANGLES = [-0.25, 0.25, -0.75, 0.75, 0, 1, -0.5, 0.5, -0.12, 0.12, -0.88, 0.88, -0.38, 0.38, -0.62, 0.62];

// cost of a spot, or Infinity where it would cover something.
function costOf(s, distance, p, points, whiskers, placed) {
  var cost = distance, i;
  for (i = 0; i < placed.length; i++) {
    if (overlap(s.rect, placed[i].rect, 3) || crosses(s.leader, placed[i].rect, 2)) { return Infinity; }
    if (placed[i].far && crosses(placed[i].leader, s.rect, 2)) { return Infinity; }
  }
  for (i = 0; i < points.length; i++) {
    var q = points[i], dot = { x: q.x - 6, y: q.y - 6, width: 12, height: 12 };
    if (overlap(s.rect, dot, 1)) { return Infinity; }
    if (q !== p && crosses(s.leader, dot, 0)) { cost += 60; }
  }
  for (i = 0; i < whiskers.length; i++) {
    if (crosses(whiskers[i], s.rect, 1)) { cost += whiskers[i].fine ? 20 : 45; }
  }
  return cost;
}

// best is the cheapest free spot for the name of point i, or null.
function best(i, points, whiskers, size, box, placed) {
  var found = null, least = Infinity;
  DISTANCES.forEach(function (d) {
    if (d >= least) { return; }
    ANGLES.forEach(function (a, n) {
      var s = spot(points[i], size, a * Math.PI, d);
      if (!inside(s.rect, box)) { return; }
      var cost = costOf(s, d, points[i], points, whiskers, placed) + n * 0.2;
      if (cost < least) { least = cost; found = s; found.far = d > 9; }
    });
  });
  return found;
}

// placeNames returns one {rect, leader, far} per name, or null when a name has
// no free place. Names in crowded places choose first; then each chooses again
// among the others, twice.
//
// With strict, a name that would cover an error bar counts as without place.
function placeNames(points, whiskers, names, box, font, strict) {
  var sizes = names.map(function (n) { return textSize(n, font); });
  var crowd = points.map(function (p) {
    return points.reduce(function (n, q) { return n + 1 / (20 + Math.hypot(p.x - q.x, p.y - q.y)); }, 0);
  });
  var order = points.map(function (_, i) { return i; });
  order.sort(function (a, b) { return crowd[b] - crowd[a] || a - b; });
  var out = new Array(points.length);
  for (var sweep = 0; sweep < 3; sweep++) {
    for (var k = 0; k < order.length; k++) {
      var i = order[k];
      var others = out.filter(function (s, j) { return s && j !== i; });
      out[i] = best(i, points, whiskers, sizes[i], box, others);
      if (!out[i]) { return null; }
    }
  }
  var covers = out.some(function (s) {
    return whiskers.some(function (w) { return !w.fine && crosses(w, s.rect, 0); });
  });
  return strict && covers ? null : out;
}
