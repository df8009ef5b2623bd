package browser

// Probe is a script for the page under test: window.probe answers questions
// about what is seen. Its value is true.
const Probe = `window.probe = (function () {
  function lum(c) {
    var v = c.slice(0, 3).map(function (x) { x /= 255; return x <= 0.04045 ? x / 12.92 : Math.pow((x + 0.055) / 1.055, 2.4); });
    return 0.2126 * v[0] + 0.7152 * v[1] + 0.0722 * v[2];
  }
  function color(s) {
    if (!s || s === 'none') { return null; }
    var h = /^#(..)(..)(..)$/.exec(s), m = /^rgba?\(([^)]*)\)$/.exec(s);
    if (h) { return h.slice(1).map(function (x) { return parseInt(x, 16); }).concat(1); }
    if (!m) { return null; }
    var n = m[1].split(/[ ,\/]+/).map(Number);
    return [n[0], n[1], n[2], n.length > 3 ? n[3] : 1];
  }
  function ratio(a, b) { var x = lum(a), y = lum(b); return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05); }
  function ground(el) {
    for (; el; el = el.parentElement) {
      var c = color(getComputedStyle(el).backgroundColor);
      if (c && c[3] === 1) { return c; }
    }
    return [255, 255, 255, 1];
  }
  // svgGround is the fill of the last opaque shape under the middle of a text,
  // else the ground of the page.
  function svgGround(el) {
    var r = el.getBoundingClientRect(), x = r.x + r.width / 2, y = r.y + r.height / 2, found = null;
    var svg = el.closest('svg');
    if (!svg.fills) {
      svg.fills = Array.from(svg.querySelectorAll('path, rect, polygon')).map(function (e) {
        var c = color(e.getAttribute('fill')), o = Number(e.getAttribute('fill-opacity') || 1) * Number(e.getAttribute('opacity') || 1);
        return c && c[3] * o > 0.95 ? { e: e, c: c, r: e.getBoundingClientRect() } : null;
      }).filter(Boolean);
    }
    svg.fills.forEach(function (f) {
      if (x >= f.r.left && x <= f.r.right && y >= f.r.top && y <= f.r.bottom && (f.e.compareDocumentPosition(el) & 4)) { found = f.c; }
    });
    return found || ground(el.closest('div'));
  }
  function texts(root) {
    return Array.from(root.querySelectorAll('svg text')).filter(function (t) { return t.textContent.trim() !== ''; });
  }
  function box(t) { var r = t.getBoundingClientRect(); return { x: r.left, y: r.top, r: r.right, b: r.bottom, text: t.textContent }; }
  return {
    drawings: function () {
      return Array.from(document.querySelectorAll('.plot')).map(function (p) {
        var svg = p.querySelector('svg');
        return {
          id: p.closest('figure').id, failed: p.classList.contains('failed'),
          shapes: svg ? svg.querySelectorAll('path, rect, circle, line, polyline, polygon, ellipse').length : 0, texts: texts(p).length,
          width: svg ? svg.getBoundingClientRect().width : 0, room: p.clientWidth,
          role: p.getAttribute('role'), label: p.getAttribute('aria-label'),
          seen: texts(p).map(function (t) { return t.textContent; }).join('').replace(/\s/g, '')
        };
      });
    },
    overlaps: function () {
      var bad = [];
      document.querySelectorAll('.plot').forEach(function (p) {
        var boxes = texts(p).map(box), edge = p.getBoundingClientRect();
        boxes.forEach(function (a, i) {
          if (a.x < edge.left - 1 || a.r > edge.right + 1 || a.y < edge.top - 1 || a.b > edge.bottom + 1) { bad.push('cut: ' + a.text); }
          boxes.slice(i + 1).forEach(function (b) {
            var w = Math.min(a.r, b.r) - Math.max(a.x, b.x), h = Math.min(a.b, b.b) - Math.max(a.y, b.y);
            if (w > 1 && h > 1) { bad.push(p.closest('figure').id + ': ' + a.text + ' | ' + b.text); }
          });
        });
      });
      return bad;
    },
    faint: function () {
      var bad = [], seen = 0, walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
      for (var n = walker.nextNode(); n; n = walker.nextNode()) {
        var el = n.parentElement;
        if (!n.data.trim() || /^(SCRIPT|STYLE|NOSCRIPT)$/.test(el.tagName) || el.getClientRects().length === 0) { continue; }
        var svg = el.closest('.plot svg');
        var ink = svg ? color(el.getAttribute('fill') || getComputedStyle(el).fill) : color(getComputedStyle(el).color);
        var paper = svg ? svgGround(el) : ground(el);
        seen++;
        if (!ink || ratio(ink, paper) < 4.5) { bad.push(n.data.trim().slice(0, 40) + ' ' + ink + ' on ' + paper); }
      }
      if (seen < 100) { bad.push('only ' + seen + ' texts looked at'); }
      return bad;
    },
    // covered are the blocks of a section that reach into the next one.
    covered: function () {
      var bad = [];
      document.querySelectorAll('main section, main figure, .board').forEach(function (s) {
        var low = -1e9, last = null;
        Array.from(s.children).forEach(function (e) {
          if (/^(SCRIPT|NOSCRIPT)$/.test(e.tagName) || !e.getClientRects().length) { return; }
          var r = e.getBoundingClientRect();
          if (r.top < low - 1) { bad.push((last.className || last.tagName) + ' reaches into ' + (e.className || e.tagName) + ' in ' + s.id); }
          low = r.bottom; last = e;
        });
      });
      return bad;
    },
    // empty are sections without any text or drawing of their own.
    empty: function () {
      return Array.from(document.querySelectorAll('main section')).filter(function (s) {
        return s.getBoundingClientRect().height < 60 || s.innerText.trim().length < 40;
      }).map(function (s) { return s.id; });
    },
    // beyond are the elements that reach past the right edge of the page.
    beyond: function () {
      var edge = document.documentElement.clientWidth;
      return Array.from(document.querySelectorAll('body *')).filter(function (e) {
        return e.getClientRects().length && !e.closest('.scroll > *') && e.getBoundingClientRect().right > edge + 1;
      }).map(function (e) { return e.tagName + '.' + (e.getAttribute('class') || '') + ' ' + Math.round(e.getBoundingClientRect().right); }).slice(0, 5);
    },
    wide: function () { return document.scrollingElement.scrollWidth - window.innerWidth; },
    tip: function () {
      var shown = Array.from(document.querySelectorAll('.tip')).filter(function (t) { return getComputedStyle(t.parentElement).visibility !== 'hidden'; });
      return shown.map(function (t) { return t.textContent; }).join('');
    },
    inkOf: function (id) { return texts(document.getElementById(id))[0].getAttribute('fill'); }
  };
}());
var style = document.createElement('style');
style.textContent = 'svg * { pointer-events: all !important; }';
document.head.appendChild(style);
true`
