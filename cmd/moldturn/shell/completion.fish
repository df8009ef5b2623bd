# fish completion for moldturn; load it with: moldturn completion fish | source
function __moldturn_complete
    set -l words (commandline -opc)
    set -l part (commandline -ct)
    set -l program $words[1]
    set -e words[1]
    set -l lines ($program complete -- $words "$part" 2>/dev/null)
    for line in $lines[2..-1]
        echo $line
    end
    set -l head (string match -r -- '^--[^=]*=' "$part")
    set -l rest (string replace -r -- '^--[^=]*=' '' "$part")
    switch "$lines[1]"
        case files
            for path in (__fish_complete_path "$rest")
                echo "$head$path"
            end
        case folders
            for path in (__fish_complete_directories "$rest" '')
                echo "$head$path"
            end
    end
end
complete -c moldturn -f -a '(__moldturn_complete)'
