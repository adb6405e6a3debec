/** Shells that can be taught what to offer at the Tab key. */
export const shells = ['bash', 'zsh', 'fish'] as const;

export type Shell = (typeof shells)[number];

/** First line of an answer that leaves it to the shell to look for files or folders. */
export const FILES = ':files';
export const FOLDERS = ':folders';

/**
 * Each asks `nestlog completion words` what fits behind the words so far: a candidate a line, behind a tab what it
 * means; a candidate that ends in `=` or `.` goes on without a blank.
 */
const scripts: Record<Shell, string> = {
  bash: String.raw`# nestlog for bash: source <(nestlog completion bash)
_nestlog() {
  local line word="" cut="" plain=1 answer
  local -a answers
  COMPREPLY=()
  # Bash takes a word apart at = and :, and puts what is offered behind the last of them.
  local part i words=()
  for ((i = 1; i <= COMP_CWORD; i++)); do
    part=${'$'}{COMP_WORDS[i]}
    if ((i > 1)) && [[ $part == [=:] || ${'$'}{COMP_WORDS[i-1]} == [=:] ]] && ((${'$'}{#words[@]})); then
      words[-1]+=$part
    else
      words+=("$part")
    fi
  done
  word=${'$'}{words[-1]}
  [[ $word == *[=:]* ]] && cut=${'$'}{word%"${'$'}{word##*[=:]}"}
  [[ $word == [\"\']* ]] && plain=0
  mapfile -t answers < <(nestlog completion words -- "${'$'}{words[@]}" 2>/dev/null)
  case ${'$'}{answers[0]-} in
    ${FILES}) compopt -o default; return ;;
    ${FOLDERS}) compopt -o filenames; mapfile -t COMPREPLY < <(compgen -d -- "$word"); return ;;
  esac
  for line in "${'$'}{answers[@]}"; do
    answer=${'$'}{line%%$'\t'*}
    answer=${'$'}{answer#"$cut"}
    [[ $answer == *[=.] ]] && compopt -o nospace
    ((plain)) && [[ $answer == *[[:space:]]* ]] && printf -v answer %q "$answer"
    COMPREPLY+=("$answer")
  done
}
complete -F _nestlog nestlog
`,
  zsh: String.raw`#compdef nestlog
# nestlog for zsh: source <(nestlog completion zsh), behind compinit
_nestlog() {
  local -a lines names shown open openshown
  local line name
  lines=("${'$'}{(@f)$(nestlog completion words -- "${'$'}{(@Q)words[2,CURRENT]}" 2>/dev/null)}")
  case ${'$'}{lines[1]} in
    ${FILES}) _files; return ;;
    ${FOLDERS}) _files -/; return ;;
  esac
  for line in $lines; do
    name=${'$'}{line%%$'\t'*}
    [[ -z $name ]] && continue
    if [[ $name == *[=.] ]]; then
      open+=("$name"); openshown+=("${'$'}{line/$'\t'/  }")
    else
      names+=("$name"); shown+=("${'$'}{line/$'\t'/  }")
    fi
  done
  ((${'$'}#names)) && compadd -l -d shown -a names
  ((${'$'}#open)) && compadd -S "" -l -d openshown -a open
}
if [[ $zsh_eval_context[-1] == loadautofunc ]]; then
  _nestlog "$@"
else
  compdef _nestlog nestlog
fi
`,
  fish: String.raw`# nestlog for fish: nestlog completion fish | source
function __nestlog_words
    set -l before (commandline -opc)
    set -l current (commandline -ct)
    set -l answers (nestlog completion words -- $before[2..-1] "$current" 2>/dev/null)
    switch "$answers[1]"
        case ${FILES}
            __fish_complete_path "$current"
        case ${FOLDERS}
            __fish_complete_directories "$current"
        case '*'
            printf '%s\n' $answers
    end
end
complete -c nestlog -f -a '(__nestlog_words)'
`,
};

/** The lines by which a shell learns what to offer behind `nestlog`. */
export function shellScript(shell: Shell): string {
  return scripts[shell];
}
