package main

// commands is the table of all commands in the order in which help lists them.
// Every call makes new ones, so that two runs in one process share no flags.
func commands() []*command {
	return append([]*command{
		compareCommand(),
		runCommand(),
		whyCommand(),
		sweepCommand(),
		reportCommand(),
		worthCommand(),
		permitCommand(),
		exposureCommand(),
		boardCommand(),
		promiseCommand(),
		launchCommand(),
		qualityCommand(),
		investCommand(),
		bestCommand(),
		sizeCommand(),
		checkCommand(),
		holdCommand(),
		newCommand(),
		listCommand(),
		explainCommand(),
		schemaCommand(),
		validateCommand(),
	}, shellCommands()...)
}

// shellCommands are about the program itself.
func shellCommands() []*command {
	return []*command{
		helpCommand(),
		completionCommand(),
		versionCommand(),
		completeCommand(),
	}
}
