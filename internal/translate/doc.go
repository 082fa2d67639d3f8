// Package translate is what a translator does with a language file: begin one
// ([NewFile]), see what it says so far and what is still to mend ([Open],
// [Samples]), see how far all have come ([StatusOf]), note which English a
// message was made from ([Stamp]), read a reader's remarks ([Remarks]), and stand for
// every word of it ([Sign]).
//
// It returns texts and problems and writes nothing.
package translate
