using System.Text;

namespace PlanForge.CommandLine;

/// <summary>Writes static completion scripts from the tables in <see cref="Syntax"/>: no process is started while typing.</summary>
internal static class CompletionScripts
{
    /// <summary>The script of a shell.</summary>
    /// <param name="shell">One of the words <see cref="Syntax.Completion"/> takes.</param>
    public static string Of(string shell) => shell switch
    {
        "bash" => Bash(),
        "zsh" => Zsh(),
        _ => Fish(),
    };

    private static string Bash()
    {
        var text = new StringBuilder("# eval \"$(planforge completion bash)\"\n_planforge() {\n");
        text.Append("  local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} command=${COMP_WORDS[1]} words=\n");
        text.Append("  compopt -o filenames 2>/dev/null\n");
        text.Append("  if ((COMP_CWORD == 1)); then\n    words='").Append(FirstWords()).Append("'\n");
        text.Append("  elif [[ $before == ").Append(Syntax.To.Name).Append(" ]]; then\n");
        text.Append("    mapfile -t COMPREPLY < <(compgen -d -- \"$word\")\n    return\n");
        text.Append("  else\n    case $command in\n");
        foreach (var command in Syntax.Commands)
        {
            text.Append("      ").Append(command.Name).Append(") words='").Append(WordsAfter(command)).Append("' ;;\n");
        }

        text.Append("    esac\n  fi\n");
        text.Append("  mapfile -t COMPREPLY < <(compgen -W \"$words\" -- \"$word\")\n");
        text.Append("  case $command in\n");
        foreach (var command in Syntax.Commands)
        {
            if (!command.Operands.Endings.IsEmpty)
            {
                text.Append("    ").Append(command.Name).Append(") [[ $word == -* ]] || mapfile -t -O ${#COMPREPLY[@]} COMPREPLY < <(compgen -d -- \"$word\"");
                foreach (var ending in command.Operands.Endings)
                {
                    text.Append("; compgen -f -X '!*.").Append(ending).Append("' -- \"$word\"");
                }

                text.Append(") ;;\n");
            }
        }

        return text.Append("  esac\n}\ncomplete -F _planforge planforge\n").ToString();
    }

    private static string Zsh()
    {
        var text = new StringBuilder("#compdef planforge\n# planforge completion zsh > a folder of $fpath/_planforge\n_planforge() {\n");
        text.Append("  if ((CURRENT == 2)); then\n    local -a commands=(\n");
        foreach (var command in Syntax.Commands)
        {
            text.Append("      '").Append(command.Name).Append(':').Append(Escaped(command.Summary)).Append("'\n");
        }

        text.Append("    )\n    _describe command commands\n    return\n  fi\n  local command=$words[2]\n  shift words; ((CURRENT--))\n  case $command in\n");
        foreach (var command in Syntax.Commands)
        {
            text.Append("    ").Append(command.Name).Append(") _arguments");
            foreach (var option in command.Options.Append(Syntax.Help))
            {
                foreach (var name in new[] { option.Name, option.Short }.OfType<string>())
                {
                    text.Append(" '").Append(name).Append('[').Append(Escaped(option.Summary)).Append(']');
                    text.Append(option.Value switch
                    {
                        null => "'",
                        "FOLDER" => ":FOLDER:_files -/'",
                        "FILE" => ":FILE:_files'",
                        { } value => $":{value}: '",
                    });
                }
            }

            text.Append(command.Operands switch
            {
                { Words.IsEmpty: false } operands => $" '1:word:({string.Join(' ', operands.Words)})'",
                { Endings.IsEmpty: false } operands => $" '*:file:_files -g \"*.({string.Join('|', operands.Endings)})\"'",
                _ => "",
            }).Append(" ;;\n");
        }

        return text.Append("  esac\n}\n_planforge \"$@\"\n").ToString();
    }

    private static string Fish()
    {
        var text = new StringBuilder("# planforge completion fish | source\ncomplete -c planforge -f\n");
        foreach (var command in Syntax.Commands)
        {
            text.Append("complete -c planforge -n __fish_use_subcommand -a ").Append(command.Name);
            text.Append(" -d '").Append(Quoted(command.Summary)).Append("'\n");
            var after = $"complete -c planforge -n '__fish_seen_subcommand_from {command.Name}'";
            foreach (var option in command.Options)
            {
                text.Append(after).Append(" -l ").Append(option.Name.AsSpan(2));
                text.Append(option.Short is { } letter ? $" -s {letter[1]}" : "");
                text.Append(option.Value switch
                {
                    null => "",
                    "FOLDER" => " -x -a '(__fish_complete_directories)'",
                    "FILE" => " -r -F",
                    _ => " -x",
                });
                text.Append(" -d '").Append(Quoted(option.Summary)).Append("'\n");
            }

            if (!command.Operands.Words.IsEmpty)
            {
                text.Append(after).Append(" -a '").AppendJoin(' ', command.Operands.Words).Append("'\n");
            }

            foreach (var ending in command.Operands.Endings)
            {
                text.Append(after).Append(" -k -a '(__fish_complete_suffix .").Append(ending).Append(")'\n");
            }
        }

        return text.ToString();
    }

    private static string FirstWords() =>
        string.Join(' ', Syntax.Commands.Select(command => command.Name).Concat([Syntax.Help.Name, Syntax.Version.Name]));

    private static string WordsAfter(CommandSyntax command) =>
        string.Join(' ', command.Operands.Words.Concat(command.Options.Append(Syntax.Help).Select(option => option.Name)));

    // Summaries stand in single quotes in all three shells.
    private static string Quoted(string summary) => summary.Replace("'", "", StringComparison.Ordinal);

    // A colon ends a part of zsh's own notation.
    private static string Escaped(string summary) => Quoted(summary).Replace(":", "\\:", StringComparison.Ordinal);
}
