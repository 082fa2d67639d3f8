# The commands of the project. `make test` is the one that must pass.

# The long commands are apart: they are not part of `make test`.
.PHONY: desk build test setup go-test browser-test browser-all lint generate screenshots clean year-test kill-test fault-test fuzz mutate bench supply sbom program release release-test

build: ## build the example school's site into public/ and desk/
	go run ./cmd/homebuild build

test: ## install what tests need, then run all of them
	$(MAKE) -j2 setup lint # one waits for the network, the other for the processor
	$(MAKE) -j2 -O go-test browser-test # a browser waits now and then

setup: ## Chromium, fonts, Java and the locked npm tools, where they are missing
	sh browser/setup.sh

lint:
	@test -z "$$(gofmt -l cmd internal browser themes locales site)" || { gofmt -l cmd internal browser themes locales site; echo 'run gofmt -w on these files'; exit 1; }
	go vet -tags browser ./...
	go tool staticcheck -tags browser ./...

# What tests make is soon forgotten: collected less often it costs a third less. What go
# test vets is a part of lint.
go-test: ## everything that needs only Go
	GOGC=400 go test -vet=off -timeout 20m ./...

browser-test: ## everything that needs Chromium, Java or npm
	go test -count=1 -timeout 40m -tags browser ./browser/...

browser-all: setup ## the full browser matrix: every language and Lighthouse (long)
	go test -count=1 -timeout 60m -tags browser ./browser/... -args -all -lighthouse

year-test: ## the desk and a build make the same bytes of every week of the example
	go test -count=1 ./cmd/homebuild -run 'TestDeskSameBytes$$' -whole-year

kill-test: ## kill 300 builds at any moment, and look at what is left
	go test -count=1 -timeout 30m ./cmd/homebuild -run 'TestKillTheProgram' -kills 300 -v
	go test -count=1 -timeout 30m ./internal/publish -run 'TestKill$$|TestKillRemoving' -kills 300 -v

fault-test: ## a disk that fills up or may only be read (needs root), a folder of someone else's, files that change while read
	go test -count=1 -tags long ./internal/publish -run 'FullDisk|ReadOnlyDisk' -v
	sh .ci/as-nobody.sh
	go test -count=1 ./cmd/homebuild -run 'FilesChange' -v

FUZZTIME = 5m
fuzz: ## each fuzz target for FUZZTIME, one after the other; what it finds stays in testdata/fuzz
	@log=$$(mktemp); for room in activity archive desk i18n ownstory page pofile publish tomlfile translate week; do \
	  for target in $$(go test ./internal/$$room -list '^Fuzz' | grep '^Fuzz'); do \
	    go test ./internal/$$room -run '^$$' -fuzz "^$$target\$$" -fuzztime $(FUZZTIME) -fuzzminimizetime 5s > $$log 2>&1 || { cat $$log; exit 1; }; \
	    echo "internal/$$room $$target $$(grep '^fuzz: elapsed' $$log | tail -n 1)"; \
	  done; \
	done; rm -f $$log

# Each change is judged by the quick run of its room's tests (-short): go doc ./cmd/mutate.
MUTATE = problem estimate strategy mistake activity picture week publish i18n
MUTATEONLY =
mutate: ## changes the code, one sign at a time, and lists what no test of its room notices (long; MUTATE=estimate for one room, MUTATEONLY=candidates.go,estimate.go:31 for files or lines of it)
	go run ./cmd/mutate -only '$(MUTATEONLY)' $(addprefix internal/,$(MUTATE))

BENCHDIR =
BENCHWEEKS = 2000
BENCHROUNDS = 5
bench: ## the tables of docs/speed.md: pages a second, beside what the computer can do at best; BENCHDIR=/mnt/a,/mnt/b chooses the disks
	go test -count=1 -tags bench -timeout 12h ./cmd/homebuild -run 'TestStart$$|TestSpeed$$' -v -on "$(BENCHDIR)" -large $(BENCHWEEKS) -rounds $(BENCHROUNDS)
	go test ./internal/i18n -run '^$$' -bench 'Word|Counted|LoadLocales' -benchmem -count 5
	go test ./internal/activity -run '^$$' -bench Year -benchmem

supply: ## what the program is made of: sums, known weaknesses, licenses, the list
	go mod verify
	go test -count=1 . -run TestNotice
	go run golang.org/x/vuln/cmd/govulncheck@latest ./... || echo 'govulncheck could not answer, or has found something: read above'
	go build -trimpath -o homebuild ./cmd/homebuild && go version -m homebuild

sbom: ## the parts of the program as a list for machines (CycloneDX), in homebuild.cdx.json
	go run github.com/CycloneDX/cyclonedx-gomod/cmd/cyclonedx-gomod@v1.10.0 app -json -licenses -noserial -main cmd/homebuild -output homebuild.cdx.json .

VERSION =
desk: ## desk.html: the whole desk in one file, to open by a double click
	go run ./cmd/desk-file -o desk.html

program: ## the program as it is given away: the same bytes wherever it is made
	CGO_ENABLED=0 go build -trimpath -buildvcs=false -ldflags "-s -w -buildid= -X main.version=$(VERSION)" -o homebuild ./cmd/homebuild
	@sha256sum homebuild

release: ## dist/: the program for six kinds of computers, desk.html, and their sums
	rm -rf dist && mkdir dist
	for os in linux darwin windows; do for arch in amd64 arm64; do \
	  name=dist/homebuild-$$os-$$arch; [ $$os = windows ] && name=$$name.exe; \
	  CGO_ENABLED=0 GOOS=$$os GOARCH=$$arch go build -trimpath -buildvcs=false -ldflags "-s -w -buildid= -X main.version=$(VERSION)" -o $$name ./cmd/homebuild || exit 1; \
	done; done
	go run ./cmd/desk-file -o dist/desk.html
	cd dist && sha256sum * > SHA256SUMS

release-test: ## make the program in two folders and compare
	sh .ci/same-program.sh

generate: ## after editing a .templ file
	go tool templ generate -path ./internal/page

screenshots: setup ## phone and paper pictures of each page kind, into screenshots/
	go test -count=1 -tags browser ./browser/... -run TestScreenshots -screenshots "$(CURDIR)/screenshots"

clean:
	rm -rf public desk desk.html dist .homebuild screenshots
