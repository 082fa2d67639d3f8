package cards

// Settings indoors and among houses.

func library() drawing {
	return join(
		backdrop(butter),
		pen(far(sky), "M14 84v-44q0-20 22-20t22 20v44z"), // window
		pen(faint, "M36 20v64M14 54h44"),
		pen(faint, "M110 0v16"), // lamp
		pen(far(orange), "M98 30q2-14 12-14t12 14z"),
		pen(earth, level),
		oval(far(rose), 70, 138, 66, 9),   // rug
		slab(brown, 132, 10, 100, 110, 4), // shelves
		slab(dark, 140, 18, 84, 26, 0),
		slab(dark, 140, 52, 84, 26, 0),
		slab(dark, 140, 86, 84, 26, 0),
		pen(rose, "M142 44v-22h10v22zM204 44l-6-20 8-2 7 22zM172 78v-22h12v22zM204 112v-22h10v22z"), // books
		pen(blue, "M152 44v-18h10v18zM142 78v-20h10v20zM184 78v-18h8v18zM166 112v-22h12v22z"),
		pen(butter, "M162 44v-22h8v22zM152 78v-22h10v22zM142 112v-20h12v20zM214 112v-18h8v18z"),
		pen(green, "M178 44v-20h12v20zM192 78v-22h10v22zM154 112v-18h12v18z"),
		disc(orange, 212, 69, 9), // a ball among them
	)
}

func nightTrain() drawing {
	return join(
		backdrop(green),
		pen(grey, "M-4 20h248v5h-248z"), // luggage rack
		pen(rose, "M110 20v-10q0-4 4-4h28q4 0 4 4v10z"),
		pen(brown, "M186 20v-12h32v12z"),
		pen(line, "M196 8v-5h12v5"),
		slab(night, -10, 34, 86, 60, 10), // windows
		slab(night, 92, 34, 142, 60, 10),
		pen(blue, "M93 86q30-28 66-8q34-20 74 4q0 10-9 11h-122q-9 0-9-7z"),                                                            // hills
		disc(butter, 150, 54, 10),                                                                                                     // moon
		disc(bare(butter), 186, 46, 2), disc(bare(butter), 210, 58, 2), disc(bare(butter), 112, 48, 2), disc(bare(butter), 18, 48, 2), // stars
		disc(bare(butter), 46, 58, 2),
		pen(brown, level),
		pen(rose, "M186 128v-42q0-8 10-8h34q10 0 10 8v42z"), // seat
		pen(rose, "M164 128v-14q0-8 10-8h66v22z"),
		pen(line, "M176 129v13M226 129v13"),
	)
}

func kitchen() drawing {
	return join(
		backdrop(white),
		slab(far(sky), 10, 20, 54, 50, 0), // window
		pen(faint, "M37 20v50"),
		pen(far(rose), "M6 16h62q-2 18-22 18h-18q-20 0-22-18z"),
		pen(earth, level),
		pen(faint, "M14 98v26M96 98v26"), // table with a bowl of fruit
		disc(far(green), 24, 80, 6), disc(far(orange), 34, 78, 6),
		pen(far(blue), "M12 82h36q-4 10-12 10h-12q-8 0-12-10z"),
		slab(far(brown), 4, 92, 102, 7, 3),
		pen(faint, "M0 132h240M20 114l-8 36M120 114v36M200 114l14 36"), // tiles
		pen(brown, "M132 44h96v6h-96z"),                                // shelf with a mug, a jar and a jug
		pen(blue, "M140 44v-14h16v14z"),
		pen(line, "M156 34q7 0 0 7"),
		pen(rose, "M170 44v-22h14v22z"),
		pen(orange, "M196 44q-6-14 4-18h8q10 4 4 18z"),
		slab(white, 138, 88, 84, 42, 4), // stove
		slab(dark, 152, 100, 38, 22, 4),
		disc(dot, 204, 104, 3), disc(dot, 204, 116, 3),
		pen(grey, "M132 84h96v8h-96z"),
		pen(blue, "M156 82v-18h44v18q0 2-4 2h-36q-4 0-4-2z"), // pot
		pen(line, "M150 64h56M178 64v-5"),
	)
}

func market() drawing {
	return join(
		backdrop(earth),
		pen(faint, "M0 16q60 20 126 6"), // flags
		pen(far(rose), "M14 20l16 4-10 14z"),
		pen(far(blue), "M46 27l16 1-7 15z"),
		pen(far(green), "M80 28l16-1-7 15z"),
		slab(far(brown), 14, 86, 58, 30, 0), // a stall far off
		pen(far(butter), "M10 64l6-14h54l6 14z"),
		pen(faint, "M18 64v22M68 64v22M30 64l3-14M56 64l-3-14"),
		disc(far(orange), 32, 80, 5),
		disc(far(rose), 46, 80, 5),
		pen(grey, level),
		pen(faint, "M8 132q10-6 20 0M112 138q10-6 20 0M150 144q10-6 20 0M206 138q10-6 20 0"), // cobbles
		slab(butter, 136, 54, 88, 44, 0), // the stall
		slab(brown, 130, 92, 100, 34, 4),
		pen(line, "M130 108h100"),
		disc(rose, 146, 85, 7), disc(rose, 160, 85, 7), disc(rose, 153, 75, 7),
		disc(orange, 184, 85, 7), disc(orange, 198, 85, 7),
		disc(green, 216, 84, 8),
		pen(white, "M126 54l10-26h88l10 26q-4 10-14 10t-13-10q-4 10-14 10t-13-10q-4 10-14 10t-13-10q-4 10-14 10t-13-10z"), // awning
		pen(rose, "M153 54l6-26h21v26q-4 10-14 10t-13-10zM207 54l-5-26h22l10 26q-4 10-14 10t-13-10z"),
	)
}

func rainyStreet() drawing {
	return join(
		backdrop(sky),
		pen(far(blue), "M-4 118v-78l26-20 26 20v78z"), // houses far off
		slab(far(butter), 14, 50, 16, 18, 0),
		pen(far(orange), "M48 118v-66h46v66z"),
		slab(far(butter), 62, 66, 16, 18, 0),
		pen(rose, "M134 118v-68h50v68z"), // houses
		pen(dark, "M128 52l31-26 31 26z"),
		pen(brown, "M184 118v-84h48v84z"),
		pen(butter, "M146 64h12v16h-12zM192 48h12v16h-12zM214 48h12v16h-12zM192 78h12v16h-12z"),
		slab(blue, 162, 90, 14, 28, 0),
		slab(dark, 212, 90, 14, 28, 0),
		pen(grey, level),
		pen(blue, "M120 136q4-8 26-8t26 8q-4 6-26 6t-26-6z"),                             // puddle
		pen(white, "M88 34q-12-2-9-12q5-8 14-5q5-10 17-8q11 2 12 10q12-2 14 8q0 7-9 7z"), // cloud
		pen(rain, "M14 14l-4 10M62 8l-4 10M112 46l-4 10M120 84l-4 10M204 14l-4 10M182 10l-4 10M8 96l-4 10M72 40l-4 10M232 10l-4 10M40 90l-4 10"),
	)
}

func garden() drawing {
	return join(
		backdrop(sky),
		cloud(120, 30),
		pen(far(grey), "M-4 100v-52h30v-14h26v30h30v-22h28v24h26v-16h30v50z"), // the town behind
		pen(faint, "M6 60h10M6 74h10M34 48h10M34 62h10M92 54h10M92 68h10"),
		pen(far(rose), "M-4 92h248v24h-248z"), // wall of the roof
		pen(faint, "M-4 104h248M30 92v12M100 92v12M170 92v12M66 104v10M136 104v10M206 104v10"),
		pen(earth, level),
		pen(line, "M156 104v-50M156 84q10 0 14-10M156 94q-10 0-14-10M190 104v-28M214 104v-40"), // stems
		disc(butter, 156, 44, 16), // sunflower
		pen(line, "M156 28v10M144 33l7 6M140 44h10M145 55l6-6M156 60v-10M168 33l-7 6M172 44h-10M167 55l-6-6"),
		disc(brown, 156, 44, 8),
		disc(rose, 184, 82, 6), disc(rose, 197, 76, 6), disc(rose, 188, 68, 6), // tomatoes
		pen(green, "M214 66q-16-4-12-24q20 2 12 24q-4-16 14-20q4 20-14 20z"), // seedling
		pen(brown, "M136 100h94l-6 28h-82z"),                                 // box
		pen(line, "M140 112h86"),
	)
}
