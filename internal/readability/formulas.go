package readability

// FleschKincaid is the school grade in the United States that a text in English
// is right for: 0.39 words/sentence + 11.8 syllables/word - 15.59.
// Source: Kincaid, Fishburne, Rogers and Chissom 1975, Navy Research Branch
// Report 8-75, page 14.
func FleschKincaid(words, sentences, syllables int) float64 {
	return 0.39*ratio(words, sentences) + 11.8*ratio(syllables, words) - 15.59
}

// Spache is the grade of a text for the first grades, by the revised formula:
// 0.121 words/sentence + 0.082 per cent of difficult words + 0.659. Each
// difficult word counts once, however often it stands in the text.
// Source: Spache, Good Reading for Poor Readers, 1974.
func Spache(words, sentences, difficult int) float64 {
	return 0.121*ratio(words, sentences) + 0.082*100*ratio(difficult, words) + 0.659
}

// Szigriszt is how easy a text in Spanish is, 206.835 - 62.3 syllables/word -
// words/sentence, as read on the INFLESZ scale: from 55 normal, from 65 fairly
// easy, from 80 very easy.
// Source: Szigriszt Pazos 1993; scale: Barrio Cantalejo 2007, page 247.
func Szigriszt(words, sentences, syllables int) float64 {
	return 206.835 - 62.3*ratio(syllables, words) - ratio(words, sentences)
}

func ratio(a, b int) float64 {
	if b == 0 {
		return 0
	}
	return float64(a) / float64(b)
}
