package cards

// Settings under the open sky, and under water.

func harbour() drawing {
	return join(
		backdrop(sky),
		cloud(92, 34),
		pen(far(rose), "M14 78l4-42h14l4 42z"), // lighthouse
		pen(far(white), "M16 60h18l-1-12h-16z"),
		pen(far(butter), "M17 36v-10l8-7 8 7v10z"),
		slab(bare(sea), 0, 76, 240, 46, 0),
		pen(faint, "M0 76h240"),
		pen(line, "M178 36v60"), // boat
		pen(white, "M170 40v46h-36q26-14 36-46z"),
		pen(butter, "M186 48q24 14 30 38h-30z"),
		pen(rose, "M134 94h92q-4 18-18 22h-56q-14-4-18-22z"),
		pen(line, "M196 22q6-6 10 0q4-6 10 0"), // a gull
		pen(white, "M-8 110q8-6 16 0t16 0 16 0 16 0 16 0 16 0 16 0 16 0 16 0 16 0 16 0 16 0 16 0 16 0 16 0 16 0v14h-256z"), // waves
		pen(grey, "M-4 118h248v36h-248z"),
		pen(faint, "M-2 134h50M100 134h140M30 120v14M130 120v14M196 120v14M160 136v14"), // stones of the quay
	)
}

func forest() drawing {
	return join(
		backdrop(sky),
		pen(far(grass), "M-4 120v-60q14-26 38-10q20-24 44 0q22-20 42 2q20-14 44 8q30-20 80 0v60z"), // the wood
		pen(far(brown), "M20 114v-34h6v34zM112 114v-30h6v30z"),
		pen(far(green), "M23 30q-22 18-14 54h28q8-36-14-54zM115 44q-18 14-12 44h24q6-30-12-44z"),
		pen(grass, "M-4 118q124-16 248 0v36h-248z"),
		pen(brown, "M178 122q6-20 2-44h24q-4 24 4 44z"), // the tree
		pen(green, "M150 86q-22-6-16-28q8-14 22-10q6-28 34-26q24 0 28 24q20 0 20 20q-2 20-22 20q-10 8-22 0q-22 10-44 0z"),
		pen(line, "M160 62q6 6 12 2M196 48q6 6 12 2"),
		pen(white, "M222 130v-10h10v10z"), // mushroom
		pen(rose, "M214 122q2-16 13-16t13 16z"),
		pen(line, "M140 138l4-8 4 8M182 140l4-8 4 8"), // grass and flowers
		disc(butter, 164, 138, 4),
		disc(white, 204, 142, 4),
	)
}

func playground() drawing {
	return join(
		backdrop(sky),
		disc(far(butter), 28, 28, 14), // sun
		cloud(96, 32),
		pen(far(green), "M-4 116v-20q14-16 30 0q16-18 34-2q16-14 30 2q14-12 30 4q20-20 40-2q20-14 44 0q20-14 40 0v14z"),
		pen(grass, level),
		pen(line, "M140 128v-84M162 128v-66M140 112h22M140 98h22M140 84h22"),                     // ladder
		pen(orange, "M138 62h36q10 0 16 14l14 30q4 8 26 8v12q-28 2-36-14l-16-30q-4-8-12-8h-28z"), // slide
		pen(rose, "M134 42l20-22 20 22z"),                                                        // roof
		pen(line, "M168 42v20"),
		oval(earth, 206, 138, 26, 7), // sand
	)
}

func mountainHut() drawing {
	return join(
		backdrop(sky),
		pen(far(grey), "M-10 118l58-92 40 62 26-36 60 66z"), // mountains
		pen(far(white), "M34 48l14-22 16 24-10 8-8-8z"),
		pen(far(grey), "M110 118l60-90 70 90z"),
		pen(far(white), "M156 50l14-22 18 22-8 8-10-8-8 8z"),
		pen(far(green), "M112 118l10-20h-6l12-26 12 26h-6l10 20z"), // fir
		pen(grass, "M-4 116q124-10 248 0v38h-248z"),
		pen(line, "M206 40q-8-8 0-14t0-14"), // smoke
		slab(grey, 200, 44, 12, 26, 0),
		pen(brown, "M146 84h76v44h-76z"), // hut
		pen(line, "M146 98h76M146 112h76"),
		pen(rose, "M136 86l48-38 48 38z"),
		slab(dark, 190, 98, 20, 30, 0),
		slab(butter, 156, 94, 20, 18, 0),
	)
}

func desertWell() drawing {
	return join(
		backdrop(butter),
		disc(far(orange), 116, 30, 14),                         // sun
		pen(far(earth), "M-4 118q40-44 90-18q60-40 160 4v20z"), // dunes
		pen(far(green), "M24 118v-22h-8q-8 0-8-8v-10h7v9h9v-33q6-10 12 0v43h9v-11h7v12q0 8-8 8h-8v12z"), // cactus
		pen(earth, "M-4 118q80-10 130-2t118-2v40h-248z"),
		pen(line, "M152 102v-56M216 102v-56M184 50v24"), // posts and rope
		slab(brown, 176, 72, 16, 14, 2),
		pen(rose, "M140 52l44-30 44 30z"),         // roof
		pen(grey, "M144 96h80l-4 34q-36 8-72 0z"), // well
		oval(dark, 184, 96, 40, 7),
		pen(line, "M146 114q38 8 76 0M170 104v12M200 104v12M184 118v14"),
	)
}

func reef() drawing {
	return join(
		backdrop(sea),
		pen(bare(sky), "M0 0h240v12q-15 10-30 0t-30 0-30 0-30 0-30 0-30 0-30 0-30 0z"),                          // light from above
		pen(far(green), "M14 122q-10-20 0-36t-2-34q18 16 10 36t4 34zM38 122q-6-14 2-26t-2-22q16 12 8 26t2 22z"), // weed
		pen(earth, "M-4 118q60-10 120 0t128-4v40h-248z"),
		pen(rose, "M172 126q2-18-16-26q-14-8-12-26q2-6 8-4q0 16 12 20q6-10 2-22q2-8 10-4q0 10 2 30q10-6 10-20q4-8 10-2q2 20-16 30q-4 8-2 24z"), // coral
		pen(blue, "M204 126q-4-28 14-28t14 28z"),                                                                                               // a round one
		disc(dot, 214, 112, 2), disc(dot, 222, 106, 2), disc(dot, 224, 118, 2),
		pen(butter, "M178 44q20-22 42 0q-22 22-42 0l-14-10v20z"), // fish
		pen(orange, "M192 34q6 10 0 20q8 2 10 0q4-10 0-20q-6-2-10 0z"),
		disc(dot, 210, 42, 3),
		disc(line, 132, 40, 5), disc(line, 122, 24, 3), disc(line, 140, 22, 4), // bubbles
		pen(butter, "M142 120l4 8 9 1-6 6 2 8-9-4-8 4 1-9-6-5 9-1z"), // starfish
	)
}
