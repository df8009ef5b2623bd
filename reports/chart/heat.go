package chart

import (
	"math"

	"github.com/go-echarts/go-echarts/v2/opts"

	"moldturn/reports/cells"
	"moldturn/reports/page"
)

// Heat shows one measure over two lists of names, such as months and areas, as
// a grid of cells from pale (low) to strong (high), with the number in the
// cell where it fits.
type Heat struct {
	Figure
	Value   Axis
	XTitle  string
	Columns []string
	Rows    []string
	Values  [][]float64 // by row, then column; NaN is a cell without a value
}

// Build makes the figure. It fails when the grid does not fit the names, or
// holds no number.
func (c Heat) Build() (page.Chart, error) {
	if len(c.Rows) == 0 || len(c.Columns) == 0 || len(c.Values) != len(c.Rows) {
		return page.Chart{}, c.fault("%d rows of values for %d rows and %d columns", len(c.Values), len(c.Rows), len(c.Columns))
	}
	columns, rows := clean(c.Columns), clean(c.Rows)
	var data []opts.CustomData
	var labels []string
	var tips []tip
	for i, vs := range c.Values {
		if len(vs) != len(columns) {
			return page.Chart{}, c.fault("row %d: %d values for %d columns", i+1, len(vs), len(columns))
		}
		for j, v := range vs {
			if math.IsNaN(v) {
				continue
			}
			if err := finite(v); err != nil {
				return page.Chart{}, c.fault("row %d, column %d: %w", i+1, j+1, err)
			}
			data = append(data, opts.CustomData{Value: []float64{float64(j), float64(i), v}})
			labels = append(labels, c.Value.number(v))
			tips = append(tips, tip{rows[i], [][]string{{columns[j], c.Value.measured(v)}}})
		}
	}
	if len(data) == 0 {
		return page.Chart{}, c.fault("no values")
	}
	low, high := extent(c.Values...)
	option, err := rectangles(c.ID, "cells", data, nameAxis("x", columns, true), nameAxis("rows", rows, true))
	if err != nil {
		return page.Chart{}, err
	}
	out := c.chart(page.Grid, rowsHeight(len(rows), 32), c.table(columns, rows))
	out.Options = option
	out.Data = map[string]any{"labels": labels, "low": low, "high": high, "tips": map[string]any{"cells": tips}}
	out.Legend = []page.Key{{Label: c.Value.title() + ", " + c.Value.between(low, high), Form: page.Ramp}}
	if c.XTitle != "" {
		out.AxisX = cells.OneLine(c.XTitle) + " →"
	}
	return out, nil
}

func (c Heat) table(columns, rows []string) cells.Table {
	t := cells.Table{Title: c.Value.title(), Columns: []cells.Column{{Head: ""}}}
	for _, n := range columns {
		t.Columns = append(t.Columns, cells.Column{Head: n, Align: cells.Right})
	}
	for i, vs := range c.Values {
		row := cells.Texts(rows[i])
		for _, v := range vs {
			row.Cells = append(row.Cells, cells.Cell{Text: c.Value.number(v)})
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}
