# The commands of the project. `make test` is the one that must pass.

# The long commands are apart: they are not part of `make test`.
.PHONY: build test setup go-test browser-test lint generate screenshots clean

build: ## build the example school's site into public/ and desk/
	go run ./cmd/homebuild build

test: setup lint go-test browser-test ## install what tests need, then run all of them

setup: ## Chromium, fonts, Java and the locked npm tools, where they are missing
	sh browser/setup.sh

lint:
	@test -z "$$(gofmt -l cmd internal browser themes locales site)" || { gofmt -l cmd internal browser themes locales site; echo 'run gofmt -w on these files'; exit 1; }
	go vet ./... && go vet -tags browser ./browser/...
	go tool staticcheck ./...

go-test: ## everything that needs only Go
	go test ./...

browser-test: ## everything that needs Chromium, Java or npm
	go test -count=1 -tags browser ./browser/...

browser-all: setup ## the full browser matrix: every language and Lighthouse (long)
	go test -count=1 -timeout 60m -tags browser ./browser/... -args -all -lighthouse

generate: ## after editing a .templ file
	go tool templ generate -path ./internal/page

screenshots: setup ## phone and paper pictures of each page kind, into screenshots/
	go test -count=1 -tags browser ./browser/... -run TestScreenshots -screenshots "$(CURDIR)/screenshots"

clean:
	rm -rf public desk .homebuild screenshots
