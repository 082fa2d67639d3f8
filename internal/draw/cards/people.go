package cards

func grandfather() drawing {
	return join(
		adult(skin3, green, grey),
		pen(white, "M60 57l-8 4 8 12 8-12z"), // shirt
		pen(line, "M60 73v26"),
		pen(white, "M39 42q0 24 21 26q21-2 21-26q-6 2-9 5h-24q-3-3-9-5z"), // beard
		twin(white, "M39 40q-8-8-2-16q6 0 6 8z"),                          // hair over the ears
		eyes(60, 36, 9),
		twin(white, "M46 29q5-4 9 0"),                               // brows
		pen(white, "M60 43q-8-2-11 5q6 3 11 0q5 3 11 0q-3-7-11-5z"), // moustache
		pen(line, "M55 55q5 4 10 0"),
		pen(line, "M93 113v-26q0-6-6-5"), // cane
	)
}

func baker() drawing {
	return join(
		adult(skin4, rose, blue),
		pen(white, "M50 62h20v10h5l2 28q-17 6-34 0l2-28h5z"), // apron
		pen(line, "M52 84h16v6q-8 6-16 0z"),
		pen(white, "M42 28q-14-8-8-18q6-7 13-2q5-6 13-6t13 6q8-5 13 2q6 10-8 18z"), // hat
		pen(white, "M41 22h38v9q-19-5-38 0z"),
		face(60, 39, 9),
		disc(line, 51, 39, 7), disc(line, 69, 39, 7), // glasses
		pen(line, "M58 38h4"),
	)
}

func captain() drawing {
	return join(
		pen(orange, "M38 30q-8 20 2 34h40q10-14 2-34z"), // hair behind
		adult(skin1, blue, dark),
		pen(white, "M52 58l8 12 8-12z"),
		disc(dot, 54, 78, 2), disc(dot, 66, 78, 2), disc(dot, 54, 88, 2), disc(dot, 66, 88, 2),
		pen(orange, "M38 40q-2-16 10-22h24q12 6 10 22q-6-2-8-10h-28q-2 8-8 10z"),
		pen(white, "M36 22q-2-14 24-16q26 2 24 16z"), // cap
		pen(blue, "M38 20h44v7h-44z"),
		pen(dark, "M42 27h36q-2 6-18 6t-18-6z"),
		disc(butter, 60, 16, 4),
		face(60, 41, 9),
	)
}

func gardener() drawing {
	return join(
		adult(skin2, butter, brown),
		pen(brown, "M48 66h24l4 33q-16 5-32 0z"),                  // apron
		pen(green, "M60 88v-7q-8 1-9-7q8 0 9 7q1-7 9-7q-1 8-9 7"), // a seedling in the pocket
		pen(brown, "M51 86h18v7q-9 5-18 0z"),
		pen(blue, "M60 11q-26 0-27 26q0 16 8 27q9 7 19 7t19-7q8-11 8-27q-1-26-27-26z"), // scarf
		pen(skin2, "M60 22q-17 2-17 20t17 17q17 1 17-17t-17-20z"),
		pen(line, "M60 64q12 0 19-12"),
		face(60, 41, 8),
	)
}

func kiteFlyer() drawing {
	return join(
		pen(line, "M85 96q24-20 12-54"), // string
		pen(rose, "M98 4l19 18-20 22-18-18z"),
		pen(line, "M98 4l-1 40M79 26l38-4"),
		disc(dark, 36, 66, 7), disc(dark, 32, 77, 6), disc(dark, 31, 87, 5), // braids
		disc(dark, 84, 66, 7), disc(dark, 88, 77, 6), disc(dark, 89, 87, 5),
		child(skin4, butter, rose),
		pen(line, "M45 92q15 5 30 0"),
		pen(dark, "M37 52q-2-26 23-26t23 26q-6-4-9-10q-8-1-14-7q-6 6-14 7q-3 6-9 10z"),
		face(60, 54, 9),
	)
}

// inventor sits in a wheelchair seen from the side, looks at us and waves.
func inventor() drawing {
	return join(
		pen(line, "M22 64h10v24"), // back of the chair
		pen(blue, "M42 82h36q9 0 9 9v16h-13v-12h-32z"),
		pen(dark, "M73 113v-7h13q8 1 9 7z"),
		disc(skin2, 90, 60, 5),
		pen(green, "M60 70q12 4 22-10q5-1 8 4q-10 20-28 20z"), // arm
		pen(green, "M54 62q-14 0-17 12v20h32v-20q-2-12-15-12z"),
		disc(skin2, 31, 44, 4), disc(skin2, 77, 44, 4),
		disc(skin2, 54, 42, 23),
		pen(dark, "M30 44q-4-28 24-28t24 28q-3-8-8-12q-16 2-20-6q-8 10-14 6q-5 6-6 12z"),
		pen(line, "M33 24h42"), // goggles
		disc(butter, 45, 24, 8), disc(butter, 63, 24, 8),
		face(54, 46, 9),
		disc(white, 46, 92, 20), // wheels
		pen(line, "M46 72v40M26 92h40"),
		disc(grey, 46, 92, 5),
		disc(grey, 72, 108, 5),
	)
}
