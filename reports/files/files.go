// Package files puts finished results on disk.
//
// A reader of a result file sees the old content or the whole new content,
// never a part: the bytes go to a new file in the same folder, and that file
// takes the name when every byte is written and synced. A program that is
// stopped in between leaves at most a file whose name ends in ".tmp". WriteAll
// does so with a set of files that belong together.
package files

import (
	"bufio"
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
)

// attempts is how many names of temporary files are tried in one folder. Names
// are taken only by files that a stopped program left behind.
const attempts = 1000

// Write makes the file at path with the content that write produces.
//
// Missing folders on the way are made. An existing regular file keeps its
// permission bits, a new one gets 0666 less the umask. A symbolic link is
// followed: the file it points to is replaced, the link stays. A path that
// names a device or a pipe, such as /dev/stdout, is written to directly, since
// there is nothing to replace.
//
// When write returns an error, or the disk does, the old file is as it was, the
// temporary file is gone, and the error carries the path.
func Write(path string, write func(io.Writer) error) error {
	return WriteAll(context.Background(), []File{{path, write}})
}

// WriteBytes is Write for content that is already in memory.
func WriteBytes(path string, content []byte) error {
	return Write(path, func(w io.Writer) error {
		_, err := w.Write(content)
		return err
	})
}

// prepare writes everything of a file but its name.
func prepare(path string, write func(io.Writer) error) (*ready, error) {
	if path == "" {
		return nil, errors.New("the path is empty")
	}
	target, err := resolve(path)
	if err != nil {
		return nil, err
	}
	perm := fs.FileMode(0)
	switch info, err := os.Stat(target); {
	case err == nil && info.IsDir():
		return nil, errors.New("this is a folder, not a file")
	case err == nil && !info.Mode().IsRegular():
		return &ready{target: target, device: write}, nil
	case err == nil:
		perm = info.Mode().Perm()
	case !errors.Is(err, fs.ErrNotExist):
		return nil, err
	}
	if err := os.MkdirAll(filepath.Dir(target), 0o777); err != nil {
		return nil, err
	}
	temp, err := beside(target, perm, write)
	return &ready{target: target, temp: temp}, err
}

// resolve follows symbolic links of an existing file; any other path is
// returned as it is.
func resolve(path string) (string, error) {
	real, err := filepath.EvalSymlinks(path)
	if errors.Is(err, fs.ErrNotExist) {
		return path, nil
	}
	return real, err
}

// direct writes to something that cannot be replaced.
func direct(path string, write func(io.Writer) error) error {
	f, err := os.OpenFile(path, os.O_WRONLY, 0)
	if err != nil {
		return err
	}
	return errors.Join(fill(f, write), f.Close())
}

// beside writes a temporary neighbor of target and gives its name. perm 0 leaves
// the permission bits to the umask.
func beside(target string, perm fs.FileMode, write func(io.Writer) error) (string, error) {
	f, err := neighbor(target)
	if err != nil {
		return "", err
	}
	err = fill(f, write)
	if err == nil && perm != 0 {
		err = f.Chmod(perm)
	}
	if err == nil {
		err = f.Sync()
	}
	if err = errors.Join(err, f.Close()); err != nil {
		return "", errors.Join(err, os.Remove(f.Name()))
	}
	return f.Name(), nil
}

// neighbor opens a new, empty file in the folder of target.
func neighbor(target string) (*os.File, error) {
	dir, base := filepath.Split(target)
	for n := range attempts {
		name := filepath.Join(dir, fmt.Sprintf(".%s.%d-%d.tmp", base, os.Getpid(), n))
		f, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
		if !errors.Is(err, fs.ErrExist) {
			return f, err
		}
	}
	return nil, errors.New("the folder is full of temporary files; remove the files that end in .tmp")
}

// fill runs write on a buffered f.
func fill(f *os.File, write func(io.Writer) error) error {
	b := bufio.NewWriter(f)
	if err := write(b); err != nil {
		return err
	}
	return b.Flush()
}
