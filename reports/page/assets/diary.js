// A diary shows boards of one moment. It steps by buttons and keys, never by
// itself. Names go into the page as texts only.
function Diary(el) {
  var source = JSON.parse(document.getElementById(el.getAttribute('data-diary')).textContent), last = 0;
  this.el = el;
  this.source = source;
  this.boards = Array.from(el.querySelectorAll('.board tbody'));
  this.moment = el.querySelector('.when');
  this.slider = el.querySelector('input');
  this.entries = source.entries.map(function (e) {
    last += e[0];
    return { from: last, to: last + e[1], board: e[2], row: e[3], names: e.slice(4) };
  });
  this.minute = source.start;
}

Diary.prototype.names = function (e) {
  var names = this.source.names;
  return e.names.map(function (n) { return names[n]; });
};

// texts are the rows of board b: of each the texts after the name of a fixed row.
Diary.prototype.texts = function (b) {
  var board = this.source.boards[b], t = this.minute, self = this, rows = [];
  var now = this.entries.filter(function (e) { return e.board === b && e.from <= t && t < e.to; });
  if (board.form === 'listed') {
    rows = now.map(function (e) { return self.names(e).concat(waitedHours(t - e.from)); });
    return rows.length ? rows : [[board.empty]];
  }
  for (var i = 0; i < board.rows; i++) {
    var own = now.filter(function (e) { return e.row === i; }).map(function (e) { return self.names(e); });
    if (own.length && board.form === 'joined') {
      own = [[own.map(function (n) { return n.join(', '); }).join('; ')]];
    }
    rows.push(own[0] || [board.empty]);
  }
  return rows;
};

function waitedHours(minutes) {
  var tenths = Math.floor((minutes + 3) / 6);
  return Math.floor(tenths / 10) + '.' + tenths % 10;
}

Diary.prototype.show = function () {
  var self = this, text = longMoment(this.source.from + this.minute * 60000);
  this.moment.textContent = text;
  this.slider.value = this.minute;
  this.slider.setAttribute('aria-valuetext', text);
  this.boards.forEach(function (body, b) {
    var board = self.source.boards[b], fixed = board.form !== 'listed', texts = self.texts(b);
    while (body.rows.length > texts.length) { body.deleteRow(-1); }
    texts.forEach(function (row, i) {
      var tr = body.rows[i] || body.insertRow(-1);
      while (tr.cells.length < board.columns) { tr.appendChild(emptyCell(tr.cells.length === 0)); }
      for (var c = fixed ? 1 : 0; c < board.columns; c++) {
        var s = row[fixed ? c - 1 : c] || '';
        if (tr.cells[c].textContent !== s) { tr.cells[c].textContent = s; }
      }
    });
  });
};

// emptyCell is a cell as the page writes it: the first of a row names the row.
function emptyCell(first) {
  var cell = document.createElement(first ? 'th' : 'td');
  if (first) { cell.scope = 'row'; }
  return cell;
}

Diary.prototype.go = function (minute) {
  this.minute = Math.max(0, Math.min(this.source.minutes - 1, minute));
  this.show();
};

// change is the nearest moment after, or before, the one shown at which an entry
// begins or ends.
Diary.prototype.change = function (ahead) {
  var t = this.minute, found = ahead ? this.source.minutes - 1 : 0;
  this.entries.forEach(function (e) {
    [e.from, e.to].forEach(function (m) {
      if (ahead ? m > t && m < found : m < t && m > found) { found = m; }
    });
  });
  return found;
};

// step answers a button or a key; false for what it does not know.
Diary.prototype.step = function (what) {
  switch (what) {
    case 'day-': this.go(this.minute - 1440); return true;
    case 'hour-': this.go(this.minute - 60); return true;
    case 'change-': this.go(this.change(false)); return true;
    case 'change+': this.go(this.change(true)); return true;
    case 'hour+': this.go(this.minute + 60); return true;
    case 'day+': this.go(this.minute + 1440); return true;
    case 'first': this.go(0); return true;
    case 'last': this.go(this.source.minutes - 1); return true;
  }
  return false;
};

var DIARY_KEYS = {
  ArrowLeft: 'hour-', ArrowRight: 'hour+', 'Shift+ArrowLeft': 'day-', 'Shift+ArrowRight': 'day+', Home: 'first', End: 'last'
};

Diary.prototype.start = function () {
  var self = this, steps = this.el.querySelector('.steps');
  steps.addEventListener('click', function (e) {
    var button = e.target.closest('button');
    if (button) { self.step(button.value); }
  });
  steps.addEventListener('keydown', function (e) {
    var key = (e.shiftKey ? 'Shift+' : '') + e.key;
    if (!e.altKey && !e.ctrlKey && !e.metaKey && DIARY_KEYS.hasOwnProperty(key)) {
      self.step(DIARY_KEYS[key]);
      e.preventDefault();
    }
  });
  this.slider.addEventListener('input', function () { self.go(Number(self.slider.value)); });
  steps.querySelectorAll('button, input').forEach(function (x) { x.disabled = false; });
  this.show();
};

var LONG_DAYS = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'];
var LONG_MONTHS = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'];

function longMoment(ms) {
  var d = new Date(ms);
  return LONG_DAYS[d.getUTCDay()] + ', ' + LONG_MONTHS[d.getUTCMonth()] + ' ' + d.getUTCDate() + ', ' + d.getUTCFullYear() + ', ' +
    ('0' + d.getUTCHours()).slice(-2) + ':' + ('0' + d.getUTCMinutes()).slice(-2);
}

document.querySelectorAll('.diary').forEach(function (el) {
  try { new Diary(el).start(); } catch (err) { console.error(err); }
});
