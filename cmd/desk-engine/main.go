//go:build js && wasm

// Command desk-engine is the engine of the desk for a browser: a worker asks it
// with homebuildAnswer(request), both in JSON as internal/desk has them.
package main

import (
	"runtime/debug"
	"syscall/js"

	"homebuild/internal/desk"
)

func main() {
	debug.SetGCPercent(300) // a browser's tab has room, and the worker has one thread
	debug.SetMemoryLimit(256 << 20)
	d := desk.New(nil)
	js.Global().Set("homebuildAnswer", js.FuncOf(func(_ js.Value, args []js.Value) any {
		return string(d.Answer([]byte(args[0].String())))
	}))
	js.Global().Call("homebuildReady")
	select {} // answers until the worker ends
}
