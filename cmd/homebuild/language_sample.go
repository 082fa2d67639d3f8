package main

import (
	"path/filepath"

	"github.com/spf13/cobra"

	"homebuild/internal/activity"
	"homebuild/internal/i18n"
	"homebuild/internal/publish"
	"homebuild/internal/site"
	"homebuild/internal/story"
	"homebuild/internal/translate"
)

// sampleOptions is what a person asks of a sample.
type sampleOptions struct {
	*streams
	tag, folder string
	watch       bool
	port        int
}

func newLanguageSampleCmd(s *streams) *cobra.Command {
	opts := sampleOptions{streams: s}
	cmd := &cobra.Command{
		Use:   "sample xx [folder]",
		Short: "everything the language says, on one page to read and sign",
		Long: `Sample makes one page, "desk/sample-xx.html", with everything that the language
says: every wording of a story told several times with other people, things and
numbers, and every message in all its forms. A fluent reader reads it once; the
page says how to sign. A file that is half done shows what is written so far.

With --watch it shows the page in your browser, as wide as a phone, and follows
while you write: save the file, and the page is there within a second. Once check
finds nothing, the pages that families will see are listed beside it. Only this
computer can see it, and nothing is written. Press ctrl-c to end it.`,
		Example: `  homebuild language sample so my-class
  homebuild language sample so my-class --watch`,
		Args: tagAndFolder,
		RunE: func(cmd *cobra.Command, args []string) error {
			opts.tag, opts.folder = args[0], secondWord(args)
			if opts.watch {
				return runLanguageWatch(cmd.Context(), opts)
			}
			return runLanguageSample(opts)
		},
		ValidArgsFunction: tagsAndFolders,
	}
	cmd.Flags().BoolVar(&opts.watch, "watch", false, "show it in the browser and follow while you write")
	cmd.Flags().IntVar(&opts.port, "port", 0, "with --watch, use this `number`")
	return cmd
}

// runLanguageSample puts the page on the desk.
func runLanguageSample(opts sampleOptions) error {
	b, err := openBench(opts.folder)
	if err != nil {
		return err
	}
	defer b.close()
	page, begun, err := b.sample(opts.tag)
	if err != nil {
		return err
	}
	desk := filepath.Join(b.folder, "desk")
	report, err := publish.Write(desk, published([]site.File{page}), publish.Options{Record: "sample-" + opts.tag})
	if err != nil {
		return err
	}
	opts.say("%s", begunSummary(begun))
	opts.say("to read  %s", filepath.Join(desk, page.Path))
	return buildOptions{streams: opts.streams}.inTheWay(desk, report)
}

// sample is the page of a language as its file is now.
func (b *bench) sample(tag string) (site.File, *translate.Draft, error) {
	begun, problems := translate.Open(tag, b.languages()...)
	if len(problems) > 0 {
		return site.File{}, nil, b.here(problems)
	}
	begun.Problems, begun.Advice = b.here(begun.Problems), b.here(begun.Advice)
	catalog, problems := b.catalog([]string{i18n.SourceTag})
	if len(problems) > 0 {
		return site.File{}, nil, b.here(problems)
	}
	theme, problems := b.look("")
	if len(problems) > 0 {
		return site.File{}, nil, b.here(problems)
	}
	targets, err := activity.Targets()
	if err != nil {
		return site.File{}, nil, err
	}
	stock, err := story.LoadStock()
	if err != nil {
		return site.File{}, nil, err
	}
	return site.Sample(site.SampleInput{Draft: begun, English: catalog.Source(), Theme: theme, Targets: targets, Stock: stock}), begun, nil
}
