#compdef moldturn
# zsh completion for moldturn; load it with: source <(moldturn completion zsh)
_moldturn() {
    local program=${~${(Q)words[1]}} kind line word
    local -a lines open closed open_notes closed_notes
    lines=("${(@f)$("$program" complete -- "${(@Q)words[2,CURRENT-1]}" "$PREFIX" 2>/dev/null)}")
    kind=$lines[1]
    for line in "${(@)lines[2,-1]}"; do
        word=${line%%$'\t'*}
        [[ -n $word ]] || continue
        if [[ $word == *= ]]; then
            open+=("$word")
            open_notes+=("${line/$'\t'/  }")
        else
            closed+=("$word")
            closed_notes+=("${line/$'\t'/  }")
        fi
    done
    (( $#closed )) && compadd -l -d closed_notes -a closed
    (( $#open )) && compadd -l -S '' -d open_notes -a open
    case $kind in
    files)   compset -P '--*='; _files ;;
    folders) compset -P '--*='; _files -/ ;;
    esac
}
if [[ $funcstack[1] == _moldturn ]]; then
    _moldturn "$@"
else
    compdef _moldturn moldturn
fi
