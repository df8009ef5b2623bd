// Package scenarios turns files into checked values. Its machinery knows nothing
// of molds: the inputs of a plant are rows of package param, gathered in a Tree
// of allowed paths, and everything follows from them:
//
//	Read       a file becomes a Document: maps, lists and texts with positions
//	Tree.Apply changes ("path=value") are worked into a Document
//	Tree.Bind  a Document becomes a Value: checked, converted, complete
//	Schema     what editors need to help while a file is written
//	List       what can be written, for people
//
// A Document that cannot be bound gives Complaints, all at once: each with file,
// line and column, what was found, what is allowed and, where one offers itself,
// a guess. Only errors of YAML syntax end the reading at the first.
//
// A scenario file is a plain subset of YAML: one document, no anchors, aliases,
// merge keys or tags, no key twice. It states the version of the format; the
// defaults of a version never change.
package scenarios
