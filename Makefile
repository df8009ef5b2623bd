# Each target is one go command.

.PHONY: run test check bench bench-peer break race golden fuzz validate

run:
	go run ./cmd/moldturn compare fenwater -o out

test:
	go test ./...

check:
	gofmt -l . | (! grep .) && go vet ./... && go tool -modfile=.staticcheck/go.mod staticcheck ./... && go mod tidy -diff

bench:
	go test -run='^$$' -bench=. -benchmem ./...

bench-peer:
	go test -tags=peer -run='^TestPeer$$' -count=1 -v ./sim

break:
	go run .break/main.go

race:
	go test -race ./sim/clock ./sim/study

golden:
	UPDATE_GOLDEN=1 go test ./cmd/... ./reports/... ./scenarios/...

fuzz:
	go test -run='^$$' -fuzz=FuzzRead -fuzztime=30s ./scenarios

SEED ?= 1

validate:
	go run ./cmd/moldturn validate --seed $(SEED)
