# bash completion for moldturn; load it with: source <(moldturn completion bash)
_moldturn() {
    local program="${COMP_WORDS[0]/#\~/$HOME}" cur="${COMP_WORDS[COMP_CWORD]}"
    local words=() word glue="" i
    # Bash splits words at "=" and ":"; they belong together here.
    for ((i = 1; i <= COMP_CWORD; i++)); do
        word="${COMP_WORDS[i]}"
        if [[ ${#words[@]} -gt 0 && ( $word == [=:]* || -n $glue ) ]]; then
            words[${#words[@]} - 1]+="$word"
        else
            words+=("$word")
        fi
        glue=""
        [[ $word == *[=:] ]] && glue=yes
    done
    [[ $cur == [=:]* ]] && cur=""

    # Bash replaces only what follows the last split, so the rest is cut off.
    local full="${words[${#words[@]} - 1]}" kind line
    local head="${full%"$cur"}"
    COMPREPLY=()
    {
        IFS= read -r kind
        while IFS= read -r line; do
            line="${line%%$'\t'*}"
            COMPREPLY+=("${line#"$head"}")
        done
    } < <("$program" complete -- "${words[@]}" 2>/dev/null)

    local from=""
    [[ $kind == files ]] && from=-f
    [[ $kind == folders ]] && from=-d
    if [[ -n $from ]]; then
        compopt -o filenames 2>/dev/null
        while IFS= read -r line; do
            COMPREPLY+=("$line")
        done < <(compgen $from -- "$cur")
    elif [[ ${#COMPREPLY[@]} -eq 1 && ${COMPREPLY[0]} == *= ]]; then
        compopt -o nospace 2>/dev/null
    fi
}
complete -F _moldturn moldturn
