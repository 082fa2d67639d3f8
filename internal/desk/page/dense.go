package page

// dense writes bytes as letters that every file, mail and web server keeps as they
// are: 91 of ASCII, two of which carry 13 bits, where base64 carries 12. None of
// them can end a script element. cmd/desk-engine/worker.js reads them.
func dense(data []byte) string {
	out := make([]byte, 0, len(data)*16/13+2)
	bits, have := 0, 0
	put := func(n int) { out = append(out, letter(n/91), letter(n%91)) }
	for _, b := range data {
		bits |= int(b) << have
		if have += 8; have >= 13 {
			put(bits & (1<<13 - 1))
			bits >>= 13
			have -= 13
		}
	}
	switch { // so many letters that their bits end within the last byte
	case have > 6:
		put(bits)
	case have > 0:
		out = append(out, letter(bits))
	}
	return string(out)
}

// letter is one of those from "#" to "~", without "<".
func letter(n int) byte {
	if n += '#'; n >= '<' {
		n++
	}
	return byte(n)
}
