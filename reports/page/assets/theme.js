// Colors live in the style sheet. An option names a role, "@ink"; the role is
// replaced here by the color of the theme in force, so a change of theme is a
// new drawing from the same option.
var ROLES = ['ink', 'muted', 'rule', 'paper', 'raised', 'accent', 'ramp0', 'ramp1',
  'c0', 'c1', 'c2', 'c3', 'c4', 'c5', 'c6', 'c7'];
var COLOR_KEYS = { color: 1, borderColor: 1, textBorderColor: 1, backgroundColor: 1 };

function palette() {
  var style = getComputedStyle(document.documentElement);
  var p = Object.create(null);
  ROLES.forEach(function (r) { p['@' + r] = style.getPropertyValue('--' + r).trim(); });
  p.font = style.getPropertyValue('--sans').trim();
  return p;
}

// painted copies an option with roles replaced under color keys only: a text of
// the form "@ink" anywhere else stays a text.
function painted(node, p) {
  if (Array.isArray(node)) { return node.map(function (n) { return painted(n, p); }); }
  if (node === null || typeof node !== 'object') { return node; }
  var out = {};
  Object.keys(node).forEach(function (k) {
    var v = node[k];
    out[k] = COLOR_KEYS[k] && typeof v === 'string' && p[v] ? p[v] : painted(v, p);
  });
  return out;
}

function channels(hex) {
  return [1, 3, 5].map(function (i) { return parseInt(hex.substr(i, 2), 16); });
}

// blend is the color at t, 0 to 1, on the straight line from a to b.
function blend(a, b, t) {
  var x = channels(a), y = channels(b);
  return '#' + x.map(function (v, i) {
    var n = Math.round(v + (y[i] - v) * t);
    return (n < 16 ? '0' : '') + n.toString(16);
  }).join('');
}

// luminance and readable follow WCAG 2.2, definitions of relative luminance and
// contrast ratio: of black and white, the one with more contrast has 4.58 or
// more on every color.
function luminance(hex) {
  var c = channels(hex).map(function (v) {
    v /= 255;
    return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
  });
  return 0.2126 * c[0] + 0.7152 * c[1] + 0.0722 * c[2];
}

function readable(fill) {
  var l = luminance(fill);
  return 1.05 / (l + 0.05) > (l + 0.05) / 0.05 ? '#ffffff' : '#000000';
}
