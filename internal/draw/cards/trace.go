package cards

import (
	"fmt"
	"strconv"
	"strings"
	"unicode"

	"homebuild/internal/draw/canvas"
)

// step is one command of path data with its numbers.
type step struct {
	command byte
	n       []int
}

// trace turns path data, in whole numbers and the commands of size, into a
// path, or into its mirror image around the middle of a character.
// Source of the commands: SVG 1.1 (W3C 2011), section 8.3.
func trace(data string, mirrored bool) *canvas.Path {
	p := new(canvas.Path)
	var bx, by int // a smooth curve (t) sets out as the curve before it came in
	for _, s := range steps(data) {
		if mirrored {
			s = s.mirror()
		}
		n := s.n
		switch s.command {
		case 'M':
			p.Move(n[0], n[1])
		case 'm':
			p.Jump(n[0], n[1])
		case 'l':
			p.By(n[0], n[1])
		case 'h':
			p.By(n[0], 0)
		case 'v':
			p.By(0, n[0])
		case 'q':
			p.Bend(n[0], n[1], n[2], n[3])
			bx, by = n[2]-n[0], n[3]-n[1]
		case 't':
			p.Bend(bx, by, n[0], n[1])
			bx, by = n[0]-bx, n[1]-by
		case 'z':
			p.Close()
		}
	}
	return p
}

// mirror reflects a step around the middle of a character.
func (s step) mirror() step {
	m := step{s.command, append([]int(nil), s.n...)}
	if s.command == 'v' {
		return m
	}
	for i := 0; i < len(m.n); i += 2 {
		m.n[i] = -m.n[i]
		if s.command == 'M' {
			m.n[i] += characterSize
		}
	}
	return m
}

// steps reads path data. Data that cannot be read is a bug of this package: it
// panics.
func steps(data string) []step {
	var all []step
	for rest := data; rest != ""; {
		command := rest[0]
		end := len(rest)
		if i := strings.IndexFunc(rest[1:], unicode.IsLetter); i >= 0 {
			end = 1 + i
		}
		size, ok := size(command)
		n, err := numbers(rest[1:end])
		if !ok || err != nil || size == 0 && len(n) > 0 || size > 0 && (len(n) == 0 || len(n)%size > 0) {
			panic(fmt.Sprintf("cards: cannot read %q in the path %q", rest[:end], data))
		}
		if size == 0 {
			all = append(all, step{command: command})
		}
		for ; len(n) > 0; n = n[size:] { // the command may stand for several
			all = append(all, step{command, n[:size]})
		}
		rest = rest[end:]
	}
	return all
}

// size says how many numbers a command takes. Only M is a place of the canvas;
// the others are steps from where the pen is.
func size(command byte) (n int, ok bool) {
	switch command {
	case 'q':
		return 4, true
	case 'M', 'm', 'l', 't':
		return 2, true
	case 'h', 'v':
		return 1, true
	case 'z':
		return 0, true
	}
	return 0, false
}

// numbers reads whole numbers; a minus sign is separator enough.
func numbers(text string) ([]int, error) {
	var all []int
	for _, word := range strings.Fields(strings.ReplaceAll(text, "-", " -")) {
		n, err := strconv.Atoi(word)
		if err != nil {
			return nil, err
		}
		all = append(all, n)
	}
	return all, nil
}
