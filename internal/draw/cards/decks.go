package cards

// characters are all characters, animals first.
func characters() []card {
	return deck("character.", "c-", []named{
		{"fox", fox()},
		{"hedgehog", hedgehog()},
		{"heron", heron()},
		{"beetle", beetle()},
		{"tortoise", tortoise()},
		{"otter", otter()},
		{"grandfather", grandfather()},
		{"baker", baker()},
		{"captain", captain()},
		{"gardener", gardener()},
		{"kite-flyer", kiteFlyer()},
		{"inventor", inventor()},
	})
}

// settings are all settings; those of the stories have the same ids there.
func settings() []card {
	return deck("setting.", "s-", []named{
		{"harbour", harbour()},
		{"market", market()},
		{"forest", forest()},
		{"garden", garden()},
		{"library", library()},
		{"night-train", nightTrain()},
		{"kitchen", kitchen()},
		{"playground", playground()},
		{"mountain-hut", mountainHut()},
		{"desert-well", desertWell()},
		{"rainy-street", rainyStreet()},
		{"reef", reef()},
	})
}

// named is a drawing with the name that is the same in all its ids.
type named struct {
	name    string
	drawing drawing
}

func deck(id, symbol string, all []named) []card {
	cards := make([]card, len(all))
	for i, n := range all {
		cards[i] = card{id + n.name, symbol + n.name, n.drawing}
	}
	return cards
}
