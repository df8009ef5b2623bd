package scenarios

import (
	"embed"
	"io/fs"
)

// floors are the folders of floor files that come with the program; their files
// have blanks in their names, as files of a shop have.
//
//go:embed all:library/fenwater-floor
var floors embed.FS

// BundledFloors lists the floors that come with the program, by the name of the
// scenario that each is of.
func BundledFloors() []string { return []string{"fenwater"} }

// BundledFloor is the folder of floor files of a bundled scenario; ok is false
// for other names.
func BundledFloor(name string) (dir fs.FS, ok bool) {
	dir, err := fs.Sub(floors, "library/"+name+"-floor")
	if err != nil {
		return nil, false
	}
	_, err = fs.Stat(dir, ".")
	return dir, err == nil
}
