// Package state writes plain data down and reads it back, exactly: every field
// of every struct, the unexported ones too, so that a field added to a table of
// the plant is saved without anybody remembering to.
//
// Plain data is numbers, truth values, text, and lists, arrays, structs, maps
// and pointers of plain data, where no two pointers lead to the same thing. What
// is not plain, such as a function, an interface or a channel, must be named as
// derived: it is left out, and left alone when the rest is read.
//
// The form is JSON. Fields that are zero are left out. Numbers with a fraction
// are written with the fewest digits that give the same bits back.
package state

import "reflect"

// Derived names fields that are made anew from something else and so are not
// saved, as "Type.field".
type Derived []string

func (d Derived) has(t reflect.Type, i int) bool {
	if len(d) == 0 {
		return false
	}
	name := fieldName(t, i)
	for _, x := range d {
		if x == name {
			return true
		}
	}
	return false
}

func fieldName(t reflect.Type, i int) string { return t.Name() + "." + t.Field(i).Name }
