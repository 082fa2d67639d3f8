package cards

func fox() drawing {
	return join(
		pen(orange, "M74 106q34 4 34-26q0-14-8-22q-10 8-12 20q-2 12-14 12z"), // tail
		pen(white, "M108 80q0-14-8-22q-8 8-11 18q10-2 19 4z"),
		oval(dark, 50, 109, 9, 5), oval(dark, 70, 109, 9, 5),
		pen(orange, "M60 62q-16 4-19 22q-2 12 2 20q17 6 34 0q4-8 2-20q-3-18-19-22z"),
		pen(white, "M60 72q-11 6-10 22q1 10 10 10t10-10q1-16-10-22z"),
		twin(orange, "M44 76q-10 8-9 20q6 3 10-2"),    // arms
		twin(orange, "M33 38q-6-16 0-30q18 4 23 18z"), // ears
		twin(dark, "M38 26q-2-6 0-9q6 2 9 7z"),
		pen(orange, "M60 71q-9-1-14-6q-17-3-21-15q7-3 7-10q3-19 28-19t28 19q0 7 7 10q-4 12-21 15q-5 5-14 6z"),
		pen(white, "M60 71q-9-1-14-6q-17-3-21-15q18-6 28 4q4 6 7 6t7-6q10-10 28-4q-4 12-21 15q-5 5-14 6z"),
		eyes(60, 45, 12),
		oval(dot, 60, 60, 5, 4),
	)
}

func hedgehog() drawing {
	return join(
		pen(brown, "M38 102l-15-2-1-14-12-9 6-13-6-14 12-8 1-15 15-1 9-12 13 6 13-6 9 12 15 1 1 15 12 8-6 14 6 13-12 9-1 14-15 2z"),
		oval(dark, 49, 110, 9, 4), oval(dark, 71, 110, 9, 4),
		pen(butter, "M60 52q-24 2-24 34q0 22 24 22t24-22q0-32-24-34z"),
		twin(butter, "M38 84q-6 8-2 14q6 2 9-4"),   // arms
		twin(brown, "M36 50q-8-4-6-12q10-2 13 7z"), // ears
		pen(butter, "M60 40q-22 0-25 18q0 16 14 20q5 2 11 2t11-2q14-4 14-20q-3-18-25-18z"),
		face(60, 56, 10),
		oval(dot, 60, 62, 5, 4),
	)
}

func heron() drawing {
	return join(
		pen(line, "M50 92v20h10M66 92v20h10"), // legs
		pen(grey, "M18 96q4-32 36-36q8-1 12-6q4-7-2-15q-6-10 2-19q8-8 19-2q8 6 4 14q-6 6 2 16q8 18-2 32q-12 18-71 16z"),
		pen(blue, "M12 98q6-28 42-30q18 2 12 14q-14 18-54 16z"), // wing
		pen(line, "M34 88q12 2 20-6"),
		pen(dark, "M64 22q-16-2-26 6q12-14 30-13z"), // crest
		pen(butter, "M89 20l28 8-30 4z"),            // beak
		oval(blush, 79, 31, 4, 3),
		disc(dot, 78, 24, 3),
	)
}

func beetle() drawing {
	return join(
		twin(line, "M52 28q-2-12-14-16"), // feelers
		disc(dot, 38, 12, 4), disc(dot, 82, 12, 4),
		twin(line, "M36 74q-10-4-16 4M34 90q-8 0-12 8"), // legs
		oval(dark, 49, 110, 9, 4), oval(dark, 71, 110, 9, 4),
		pen(rose, "M60 56q-28 2-28 30q0 22 28 24q28-2 28-24q0-28-28-30z"),
		pen(line, "M60 60v50"),
		disc(dot, 45, 84, 5), disc(dot, 75, 84, 5), disc(dot, 52, 99, 4), disc(dot, 68, 99, 4),
		oval(butter, 60, 48, 25, 22),
		pen(dark, "M36 42q4-16 24-16t24 16q-10 0-24-8q-14 8-24 8z"),
		face(60, 50, 10),
	)
}

func tortoise() drawing {
	return join(
		pen(green, "M20 92v21h16v-14M66 96v17h16v-18"),                                  // legs
		pen(green, "M12 94q-6 4-8 10q10 2 20-8z"),                                       // tail
		pen(green, "M72 92q14-10 8-26q-14-26 12-30q26 0 24 22q-2 14-14 16q2 20-18 24z"), // neck and head
		pen(brown, "M8 96q-2-46 42-46t42 46q-42 8-84 0z"),
		pen(butter, "M8 96q42 8 84 0q0-6-1-10q-40 10-82 0q-1 4-1 10z"),
		pen(line, "M36 52l-6 16 20 10 20-10-6-16M30 68l-14 6M70 68l14 6M50 78v14"),
		face(97, 52, 7),
	)
}

func otter() drawing {
	return join(
		pen(brown, "M74 106q26 2 34-16q4-8-3-9q-6 2-9 7q-8 8-22 8z"), // tail
		oval(brown, 48, 109, 10, 5), oval(brown, 72, 109, 10, 5),
		pen(brown, "M60 50q-20 4-22 34q-1 18 4 22q18 5 36 0q5-4 4-22q-2-30-22-34z"),
		pen(butter, "M60 60q-13 4-13 28q1 16 13 16t13-16q0-24-13-28z"),
		twin(brown, "M42 70q-8 12 6 18q7 1 7-6q-6-2-6-8"), // arms
		twin(brown, "M40 28q-10-2-8-11q10-6 16 4z"),       // ears
		pen(brown, "M60 14q-24 0-26 22q-1 22 26 24q27-2 26-24q-2-22-26-22z"),
		pen(butter, "M60 40q-18-2-18 10q2 9 18 10q16-1 18-10q0-12-18-10z"),
		twin(line, "M42 47l-13-3M42 52l-12 3"), // whiskers
		eyes(60, 34, 11),
		oval(dot, 60, 43, 6, 4),
		pen(line, "M54 51q3 3 6-1q3 4 6 1"),
	)
}
