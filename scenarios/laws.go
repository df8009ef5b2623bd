package scenarios

import (
	"strconv"

	"moldturn/sim/draw"
	"moldturn/sim/param"
)

// laws remembers distributions by the input and the text they were read from.
type laws map[string]draw.Dist

// parse is parseDist for a text that may have been read before.
func (l laws) parse(row param.Row, text string) (draw.Dist, error) {
	key := row.Path + "=" + text
	if d, ok := l[key]; ok {
		return d, nil
	}
	d, err := parseDist(row, text)
	if err == nil {
		l[key] = d
	}
	return d, err
}

// spread is a gamma law with that mean and ratio of deviation to mean. All of
// one ratio share one table.
func (l laws) spread(mean, cv float64) (draw.Dist, error) {
	key := "spread " + strconv.FormatFloat(cv, 'g', -1, 64)
	unit, ok := l[key]
	if !ok {
		var err error
		if unit, err = draw.Gamma(1, cv); err != nil {
			return nil, err
		}
		l[key] = unit
	}
	return draw.Scaled(unit, mean)
}
