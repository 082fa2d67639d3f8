//go:build js && wasm

// Command desk-engine is the engine of the desk for a browser: a worker asks it
// with homebuildAnswer(request), both in JSON as internal/desk has them.
package main

import (
	"syscall/js"

	"homebuild/internal/desk"
)

func main() {
	d := desk.New(nil)
	js.Global().Set("homebuildAnswer", js.FuncOf(func(_ js.Value, args []js.Value) any {
		return string(d.Answer([]byte(args[0].String())))
	}))
	js.Global().Call("homebuildReady")
	select {} // answers until the worker ends
}
