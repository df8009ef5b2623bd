// Package ahead runs a plant from where it stands into many futures that differ
// in luck, and keeps of each what a plan of the next weeks is made of: who does
// what when in which booth, what is pulled, stripped and shipped, and for whom
// work waits. Chances come from counting futures; they are those of the model.
package ahead
